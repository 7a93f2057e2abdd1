package org.shelterwright.layouts.ledger.access;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * Two work places do not share the space of a seated person: max over their seat zones of the depth = 0, on station. A
 * seat drawn up to a work place is the seat of that place.
 *
 * <p>Source: common practice.
 */
final class SeatsApart extends NamedLimit implements Limit.OfPair {
    SeatsApart() {
        super(
                "access.seats-apart",
                Subject.ACCESS,
                "Work places apart",
                Severity.MEDIUM,
                Source.commonPractice("Two people do not sit in one place"),
                "No two work places share space.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows) {
        boolean seatAtPlace = (a.item().kind() == ItemKind.SEAT) != (b.item().kind() == ItemKind.SEAT);
        Box shared = seatAtPlace ? null : shared(a, b);
        if (shared != null) {
            int depth = depth(a, b);
            rows.add(rows.draft(this)
                    .units(a, b)
                    .place(shared)
                    .state(Wording.situation(Situation.ON_STATION))
                    .mend("Move " + a.name() + " and " + b.name() + " apart by at least " + Wording.mm(depth) + ".")
                    .atMost(
                            depth / 1e3,
                            0,
                            "mm",
                            "The seat zones of " + a.name() + " and " + b.name() + " overlap by " + Wording.mm(depth)
                                    + "."));
        }
    }

    private static int depth(PlacedUnit a, PlacedUnit b) {
        int deepest = 0;
        for (PlacedZone one : seats(a)) {
            for (PlacedZone other : seats(b)) {
                deepest = Math.max(deepest, one.box().depth(other.box()));
            }
        }
        return deepest;
    }

    private static @Nullable Box shared(PlacedUnit a, PlacedUnit b) {
        Box shared = null;
        int deepest = 0;
        for (PlacedZone one : seats(a)) {
            for (PlacedZone other : seats(b)) {
                int depth = one.box().depth(other.box());
                if (depth > deepest) {
                    deepest = depth;
                    shared = one.box().intersection(other.box());
                }
            }
        }
        return shared;
    }

    private static List<PlacedZone> seats(PlacedUnit unit) {
        return unit.zones(Situation.ON_STATION).stream()
                .filter(zone -> zone.purpose() == Purpose.SEAT)
                .toList();
    }
}
