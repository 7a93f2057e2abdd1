package org.shelterwright.layouts.ledger.fit;

import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A unit is mounted on a surface that its item allows. Demand: 1 if not, of 0.
 *
 * <p>Source: the mounting of the item in the catalog.
 */
final class SurfaceAllowed extends NamedLimit implements Limit.OfUnit {
    SurfaceAllowed() {
        super(
                "fit.surface",
                Subject.FIT,
                "Surface",
                Severity.HARD,
                Source.stated("Catalog", "mounting of the item"),
                "Every unit is on a surface that it may be mounted on.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        Set<Surface> allowed = unit.item().mounting().surfaces();
        GoverningCase worst = GoverningCase.of(situation -> allowed.contains(surface(unit, situation)) ? 0 : 1);
        if (worst.amount() > 0) {
            String others =
                    Wording.list(allowed.stream().sorted().map(Wording::surface).toList());
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(worst.situation()))
                    .state(worst.state())
                    .mend("Mount it on " + others + ".")
                    .atMost(
                            1,
                            0,
                            "",
                            unit.name() + " is mounted on " + Wording.surface(surface(unit, worst.situation()))
                                    + ", which its item does not allow."));
        }
    }

    private static Surface surface(PlacedUnit unit, Situation situation) {
        return unit.place(situation).surface();
    }
}
