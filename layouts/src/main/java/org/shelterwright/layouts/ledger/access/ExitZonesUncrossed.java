package org.shelterwright.layouts.ledger.access;

import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
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
 * No door, lid, drawer or slide-out moves through an exit zone of another unit: depth of its sweep in the zone = 0, on
 * station.
 *
 * <p>Source: common practice.
 */
final class ExitZonesUncrossed extends NamedLimit implements Limit.OfPair {
    ExitZonesUncrossed() {
        super(
                "access.exit-zone",
                Subject.ACCESS,
                "Exit zones uncrossed",
                Severity.MEDIUM,
                Source.commonPractice("The way out never leads through an opened drawer or door"),
                "No movable part crosses an exit zone.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows) {
        for (PlacedZone one : a.zones(Situation.ON_STATION)) {
            for (PlacedZone other : b.zones(Situation.ON_STATION)) {
                if (one.purpose() == Purpose.EXIT && other.purpose() == Purpose.SWING) {
                    assess(one, other, rows);
                } else if (one.purpose() == Purpose.SWING && other.purpose() == Purpose.EXIT) {
                    assess(other, one, rows);
                }
            }
        }
    }

    private void assess(PlacedZone exit, PlacedZone swing, Rows rows) {
        int depth = exit.box().depth(swing.box());
        if (depth > 0) {
            rows.add(rows.draft(this)
                    .units(exit.owner(), swing.owner())
                    .place(exit.box().intersection(swing.box()))
                    .state(Wording.situation(Situation.ON_STATION))
                    .mend("Move " + swing.owner().name() + " by at least " + Wording.mm(depth) + ", or turn it.")
                    .atMost(
                            depth / 1e3,
                            0,
                            "mm",
                            "\"" + swing.name() + "\" of " + swing.owner().name() + " moves " + Wording.mm(depth)
                                    + " into " + ZoneWords.of(exit) + "."));
        }
    }
}
