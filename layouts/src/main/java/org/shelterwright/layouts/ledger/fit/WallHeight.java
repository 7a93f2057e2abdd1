package org.shelterwright.layouts.ledger.fit;

import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Shift;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The bottom of a unit on a wall lies within the heights that its item states; demand: the length by which it lies below
 * or above them (mm), of 0.
 *
 * <p>Source: the mounting of the item in the catalog.
 */
final class WallHeight extends NamedLimit implements Limit.OfUnit {
    WallHeight() {
        super(
                "fit.wall-height",
                Subject.FIT,
                "Height on the wall",
                Severity.HARD,
                Source.stated("Catalog", "mounting of the item"),
                "Every unit on a wall hangs at a height that it may have.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        GoverningCase worst =
                GoverningCase.of(situation -> Math.max(tooLow(unit, situation), tooHigh(unit, situation)));
        if (worst.amount() > 0) {
            boolean low = tooLow(unit, worst.situation()) > 0;
            Shift shift = new Shift(low ? Face.TOP : Face.BOTTOM, worst.amount());
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(worst.situation()))
                    .state(worst.state())
                    .mend("Move " + unit.name() + " " + shift.words() + ".")
                    .atMost(
                            worst.amount() / 1e3,
                            0,
                            "mm",
                            "The bottom of " + unit.name() + " hangs "
                                    + Wording.mm(unit.outline(worst.situation()).z0())
                                    + " above the floor, " + Wording.mm(worst.amount()) + " too "
                                    + (low ? "low." : "high.")));
        }
    }

    private static int tooLow(PlacedUnit unit, Situation situation) {
        Mounting mounting = unit.item().mounting();
        Integer lowest = mounting.lowestAbove();
        return lowest == null || !onWall(unit, situation)
                ? 0
                : Math.max(0, lowest - unit.outline(situation).z0());
    }

    private static int tooHigh(PlacedUnit unit, Situation situation) {
        Mounting mounting = unit.item().mounting();
        Integer highest = mounting.highestAbove();
        return highest == null || !onWall(unit, situation)
                ? 0
                : Math.max(0, unit.outline(situation).z0() - highest);
    }

    private static boolean onWall(PlacedUnit unit, Situation situation) {
        return unit.place(situation).surface() == Surface.WALL;
    }
}
