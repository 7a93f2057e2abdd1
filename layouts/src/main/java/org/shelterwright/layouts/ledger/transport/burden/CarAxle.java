package org.shelterwright.layouts.ledger.transport.burden;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.transit.LineCategories.Category;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.CarStatics.GroupLoad;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Each axle of a car bears no more than its rating and, on rails, than the line category takes. The axles of a bogie share its load.
 * Source: EN 15528 for line categories (seen); the sheet of the car.
 */
final class CarAxle extends WagonLimit {
    CarAxle() {
        super("axle", "Axle load", Source.seen("EN 15528", "axle load of the line category"));
    }

    @Override
    boolean binds(LegScene leg, PlacedLoad load) {
        return true;
    }

    @Override
    Row row(LegScene leg, PlacedLoad load, CarStatics statics, RowDraft draft) {
        Category category = leg.lineCategory().orElse(null);
        boolean rail = load.car().kind().wagon();
        if (rail && category == null) {
            return draft.notAssessed("The line category of " + leg.state()
                    + " is not known. Give \"lineCategory\" of leg " + leg.leg().id() + ".");
        }
        GroupLoad worst = null;
        double worstLimit = 0;
        boolean byLine = false;
        for (GroupLoad group : statics.groups()) {
            Double rating = group.group().axleRatingKg();
            if (rating == null && !rail) {
                return draft.notAssessed("The " + group.group().name() + " of the "
                        + load.car().name() + " states no axle rating. Give \"axleRatingKg\" in car "
                        + load.car().id() + ".");
            }
            double line = rail && category != null ? category.axleKg() : Double.MAX_VALUE;
            double limit = rating == null ? line : Math.min(rating, line);
            if (worst == null || group.axleKg() / limit > worst.axleKg() / worstLimit) {
                worst = group;
                worstLimit = limit;
                byLine = line <= limit;
            }
        }
        if (worst == null) {
            return draft.notAssessed("The car has no axles.");
        }
        String of = byLine && category != null ? "line category " + category.name() : "its rating";
        double kg = worst.axleKg();
        return draft.source(byLine ? source() : load.car().source())
                .nominal(worst.kg() / worst.group().axles())
                .mend(
                        kg > worstLimit
                                ? "Move the load off " + worst.group().name() + ", or take a car with more axles."
                                : null)
                .atMost(
                        kg,
                        worstLimit,
                        "kg",
                        "Each axle of " + worst.group().name() + " bears " + Amounts.kg(kg) + " of "
                                + Amounts.kg(worstLimit) + " by " + of + ".");
    }
}
