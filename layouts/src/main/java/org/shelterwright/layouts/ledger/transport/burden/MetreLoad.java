package org.shelterwright.layouts.ledger.transport.burden;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.LineCategories.Category;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * The mass of the loaded wagon on each metre over buffers is within the line category: {@code (tare + load)/length}. Source: EN 15528
 * (seen): the figure of a category is the load per metre.
 */
final class MetreLoad extends WagonLimit {
    MetreLoad() {
        super("metre-load", "Load per metre", Source.seen("EN 15528", "load per metre of the line category"));
    }

    @Override
    Row row(LegScene leg, PlacedLoad load, CarStatics statics, RowDraft draft) {
        Category category = leg.lineCategory().orElse(null);
        Integer over = load.car().lengthOver();
        if (category == null) {
            return draft.notAssessed("The line category of " + leg.state()
                    + " is not known. Give \"lineCategory\" of leg " + leg.leg().id() + ".");
        }
        if (over == null) {
            return draft.notAssessed(
                    "The length over buffers of the " + load.car().name() + " is not known. Give \"lengthOver\" in car "
                            + load.car().id() + ".");
        }
        double perMetre = (load.car().tareKg() + load.massKg() + load.uncertaintyKg()) / Lengths.metres(over);
        String least = leg.journey().parts().transit().lineCategories().stream()
                .findFirst()
                .flatMap((LineCategories table) -> table.least(statics.greatestAxleKg(), perMetre))
                .map(one -> " Axles and metres need category " + one.name() + " at least.")
                .orElse(" No category of the table takes its axles and metres.");
        return draft.mend(perMetre > category.perMetreKg() ? "Take a longer wagon or something off it." : null)
                .atMost(
                        perMetre,
                        category.perMetreKg(),
                        "kg/m",
                        load.name() + " weighs " + Amounts.number(perMetre, 0)
                                + " kg on each metre over buffers; category " + category.name() + " takes "
                                + Amounts.number(category.perMetreKg(), 0) + " kg." + least);
    }
}
