package org.shelterwright.layouts.ledger.access;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Separation;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * The leaf of a door or hatch that opens inward has its space in both situations: depth of a solid in it = 0; and of an
 * exit, no movable part of a unit moves through it either. One row for each unit and opening.
 *
 * <p>Where the hinge is known and upright, only the quarter circle that the leaf sweeps counts: what stands in the corner of
 * the space beyond its reach is free. Without it, the whole space counts, which is on the safe side.
 *
 * <p>Source: common practice.
 */
final class OpeningSwingsFree extends NamedLimit implements Limit.OfUnit {
    OpeningSwingsFree() {
        super(
                "access.opening-swing",
                Subject.ACCESS,
                "Doors of the body open",
                Severity.HARD,
                Source.commonPractice("Every door of the body opens fully"),
                "Every door and hatch of the body opens.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        for (Opening opening : scene.body().openings()) {
            Box swing = opening.swing();
            if (swing != null) {
                assess(scene, unit, opening, swing, rows);
            }
        }
    }

    private void assess(Scene scene, PlacedUnit unit, Opening opening, Box swing, Rows rows) {
        GoverningCase worst = GoverningCase.of(situation -> solidDepth(unit, opening, swing, situation));
        if (worst.amount() > 0) {
            String mend = Separation.least(scene, unit, worst.situation(), List.of(swing))
                    .map(shift -> "Move " + unit.name() + " at least " + shift.words() + ".")
                    .orElse("Find another place for " + unit.name() + ".");
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(swing)
                    .state(worst.state())
                    .mend(mend)
                    .atMost(
                            worst.amount() / 1e3,
                            0,
                            "mm",
                            unit.name() + " stands " + Wording.mm(worst.amount()) + " into the way of " + opening.name()
                                    + "."));
        }
        PlacedZone crossing = opening.exit() ? crossing(unit, swing) : null;
        if (crossing != null) {
            int depth = crossing.box().depth(swing);
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(swing)
                    .state(Wording.situation(Situation.ON_STATION))
                    .mend("Move " + unit.name() + " by at least " + Wording.mm(depth) + ", or turn it.")
                    .atMost(
                            depth / 1e3,
                            0,
                            "mm",
                            "\"" + crossing.name() + "\" of " + unit.name() + " moves " + Wording.mm(depth)
                                    + " into the way of the exit " + opening.name() + "."));
        }
    }

    private static int solidDepth(PlacedUnit unit, Opening opening, Box swing, Situation situation) {
        int deepest = 0;
        for (Box solid : unit.solids(situation)) {
            if (reached(opening, swing, solid)) {
                deepest = Math.max(deepest, solid.depth(swing));
            }
        }
        return deepest;
    }

    /** Whether the leaf comes to a solid that overlaps its space: nearer to the hinge than the leaf is wide. */
    private static boolean reached(Opening opening, Box swing, Box solid) {
        Face hinge = opening.hinge();
        if (hinge == null || !hinge.upright() || !opening.wall().upright() || !solid.overlaps(swing)) {
            return solid.overlaps(swing);
        }
        Axis out = opening.wall().axis();
        Axis across = hinge.axis();
        int radius = Math.max(swing.extent(out), swing.extent(across));
        long away = distance(solid, out, opening.area().low(out));
        long aside = distance(solid, across, swing.face(hinge).low(across));
        return away * away + aside * aside < (long) radius * radius;
    }

    /** From a plane to the nearest part of a solid. */
    private static long distance(Box solid, Axis axis, int plane) {
        return Math.max(0, Math.max(solid.low(axis) - (long) plane, (long) plane - solid.high(axis)));
    }

    private static @Nullable PlacedZone crossing(PlacedUnit unit, Box swing) {
        PlacedZone deepest = null;
        for (PlacedZone zone : unit.zones(Situation.ON_STATION)) {
            if (zone.purpose() == Purpose.SWING
                    && zone.box().depth(swing)
                            > (deepest == null ? 0 : deepest.box().depth(swing))) {
                deepest = zone;
            }
        }
        return deepest;
    }
}
