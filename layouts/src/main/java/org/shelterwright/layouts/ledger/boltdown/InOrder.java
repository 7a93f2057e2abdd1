package org.shelterwright.layouts.ledger.boltdown;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Blockers;
import org.shelterwright.layouts.ways.KeptWays;
import org.shelterwright.layouts.ways.UnitWays;

/**
 * Each unit comes in past those that are in before it, in the order of the layout, and what carries it is in before it.
 *
 * <p>Source: common practice; the way by exact sliding and a safe bound for turns (theory manual, bolt-down).
 */
final class InOrder extends NamedLimit implements Limit.AtRest {
    private static final String FIND = "Find an order: shelterwright bolt-down FILE --out FOLDER.";

    InOrder() {
        super(
                "boltdown.order",
                Subject.BOLT_DOWN,
                "Comes in, in order",
                Severity.MEDIUM,
                Source.commonPractice("Each unit comes in past those that are in before it"),
                "There is nothing to bring in.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        if (scene.units().isEmpty()) {
            return;
        }
        if (UnitWays.openings(scene.body()).isEmpty()) {
            rows.add(rows.draft(this)
                    .mend("Enter its doors, hatches and removable panels.")
                    .notAssessed(
                            "The body " + scene.body().name() + " states no opening through which anything comes in."));
            return;
        }
        Optional<Sequence> sequence = Sequence.of(scene);
        if (sequence.isEmpty()) {
            rows.add(rows.draft(this).mend(FIND).notAssessed("The layout holds no order of bringing in."));
            return;
        }
        missing(sequence.get(), rows);
        int held = walk(scene, sequence.get(), rows);
        int count = sequence.get().units().size();
        if (held == count) {
            rows.add(rows.draft(this)
                    .state("while bolting down")
                    .countedAtLeast(
                            count,
                            count,
                            "units",
                            count == 1
                                    ? "The one unit comes in."
                                    : "All " + count + " units come in, each past those before it."));
        }
    }

    private void missing(Sequence sequence, Rows rows) {
        if (!sequence.leftOut().isEmpty()) {
            List<String> names =
                    sequence.leftOut().stream().map(PlacedUnit::name).toList();
            rows.add(rows.draft(this)
                    .units(sequence.leftOut().toArray(PlacedUnit[]::new))
                    .mend(FIND)
                    .notAssessed("The order leaves out " + Wording.list(names) + "."));
        }
    }

    private int walk(Scene scene, Sequence sequence, Rows rows) {
        KeptWays ways = new KeptWays(scene);
        BitSet gone = sequence.goneAt(0, scene.units().size());
        int held = 0;
        for (PlacedUnit unit : sequence.units()) {
            String host = unit.place(Situation.ON_STATION).host();
            PlacedUnit carrier = host == null ? null : scene.unit(host).orElse(null);
            if (carrier != null && gone.get(carrier.index())) {
                rows.add(rows.draft(this)
                        .units(unit, carrier)
                        .place(unit.outline(Situation.ON_STATION))
                        .state("while bolting down")
                        .mend("Bring " + carrier.name() + " in first.")
                        .atMost(1, 0, "unit", unit.name() + " comes before " + carrier.name() + ", which carries it."));
            } else if (ways.free(unit, gone)) {
                held++;
            } else {
                blocked(ways.ways(), unit, gone, rows);
            }
            gone.clear(unit.index());
        }
        return held;
    }

    private void blocked(UnitWays ways, PlacedUnit unit, BitSet gone, Rows rows) {
        Optional<List<PlacedUnit>> blockers = Blockers.of(ways, unit, gone);
        if (blockers.isEmpty()) {
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(Situation.ON_STATION))
                    .state("while bolting down")
                    .mend("Mend that first: see the rows on openings and overlaps.")
                    .atMost(1, 0, "unit", unit.name() + " has no way in even with nothing else in the body."));
            return;
        }
        List<String> names = blockers.get().stream().map(PlacedUnit::name).toList();
        rows.add(rows.draft(this)
                .units(unit)
                .units(blockers.get().toArray(PlacedUnit[]::new))
                .place(unit.outline(Situation.ON_STATION))
                .state("while bolting down")
                .mend("Bring it in before " + Wording.list(names) + ", or move "
                        + (names.size() == 1 ? "that one." : "them."))
                .atMost(
                        names.size(),
                        0,
                        "units in the way",
                        unit.name() + " does not come in past " + Wording.list(names) + "."));
    }
}
