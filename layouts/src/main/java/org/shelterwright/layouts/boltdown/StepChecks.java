package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.PartOff;
import org.shelterwright.layouts.handling.Carried;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage;

/** What is measured, tightened, looked at and tested at a step. */
final class StepChecks {
    private static final double TOLERANCE_MM = 2;
    private static final double TORQUE_SHARE = 0.06;

    private StepChecks() {}

    static List<StepCheck> of(
            Scene scene,
            PlacedUnit unit,
            List<Bolting> boltings,
            List<CableTask> cables,
            Passage passage,
            Carried carried) {
        List<StepCheck> checks = new ArrayList<>();
        for (Datum datum : Datum.of(scene, unit)) {
            String axis = datum.from().axis().name().toLowerCase(Locale.ROOT);
            checks.add(new StepCheck(
                    unit.id() + "/" + axis,
                    StepCheck.Kind.POSITION,
                    datum.text(),
                    "measured",
                    datum.length() / 1000.0,
                    "mm",
                    TOLERANCE_MM));
        }
        for (int i = 0; i < boltings.size(); i++) {
            Bolting one = boltings.get(i);
            Double torque = one.finalNm();
            int count = one.places().size();
            checks.add(new StepCheck(
                    unit.id() + "/torque" + (i == 0 ? "" : "-" + (i + 1)),
                    StepCheck.Kind.TORQUE,
                    torque == null
                            ? "Torque of " + one.text() + " not known: ask"
                            : (count == 1 ? "1 bolt " : "All " + count + " ") + one.thread() + " at " + number(torque)
                                    + " N·m",
                    "two rounds, crosswise, paint mark",
                    torque,
                    "N·m",
                    torque == null ? 0 : Math.max(0.5, TORQUE_SHARE * torque)));
        }
        for (MovablePart part : unit.item().movableParts()) {
            checks.add(look(
                    unit,
                    "opens-" + part.name(),
                    sentence(part.name())
                            + (part.name().endsWith("s") ? " open and close fully" : " opens and closes fully"),
                    ""));
        }
        for (CableTask cable : cables) {
            if (cable.closed()) {
                checks.add(new StepCheck(
                        unit.id() + "/wire-" + cable.wire(),
                        StepCheck.Kind.TEST,
                        cable.wire().toUpperCase(Locale.ROOT) + " connected, labels on, tested",
                        cable.earthing() ? "below 0.1 ohm" : "continuity, pull on each end",
                        null,
                        "",
                        0));
            }
        }
        for (InRack piece : carried.later()) {
            checks.add(look(
                    unit,
                    "piece-" + piece.id(),
                    sentence(piece.name()) + " fitted",
                    "all its screws in, nothing left loose"));
        }
        for (PartOff part : carried.off()) {
            checks.add(look(unit, "part-" + part.name(), sentence(part.name()) + " put on again", "as it came off"));
        }
        Opening opening = passage.opening();
        if (opening != null) {
            checks.add(look(unit, "door", sentence(opening.name()) + " still opens fully", "the way out stays free"));
        }
        return checks;
    }

    private static StepCheck look(PlacedUnit unit, String id, String text, String hint) {
        return new StepCheck(unit.id() + "/" + id, StepCheck.Kind.LOOK, text, hint, null, "", 0);
    }

    private static String sentence(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static String number(double value) {
        return Amounts.number(value, 1);
    }
}
