package org.shelterwright.layouts.ledger.transport.burden;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * The mass on a car is within its load limit: of a wagon that of the line's category, of anything the payload and what the gross
 * rating leaves. Source: the sheet of the car; ISO 668 for containers.
 */
final class CarLoad extends LegLimit {
    CarLoad() {
        super(
                "load",
                "Load of the car",
                Source.commonPractice("the load limit of the car"),
                "No load goes on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            TransitCar car = load.car();
            RowDraft draft =
                    draft(leg, rows, "Load, " + load.name()).units(load.ids()).source(car.source());
            String unknown = load.unknown().orElse(null);
            Double limitKg = CarChoice.loadLimitKg(car, leg.lineCategory());
            if (unknown != null) {
                rows.add(draft.notAssessed(unknown));
            } else if (limitKg == null) {
                rows.add(draft.notAssessed("The " + car.name() + " states no greatest load. Give \"payloadKg\","
                        + " \"grossRatingKg\" or \"loadLimits\" in car " + car.id() + "."));
            } else if (car.kind().wagon()
                    && !car.loadLimits().isEmpty()
                    && leg.lineCategory().isEmpty()) {
                rows.add(draft.notAssessed(
                        "The line category of " + leg.state() + " is not known. Give \"lineCategory\" of leg "
                                + leg.leg().id() + "."));
            } else {
                double kg = load.massKg() + load.uncertaintyKg();
                String line = car.loadLimits().isEmpty()
                        ? ""
                        : leg.lineCategory()
                                .map(one -> " on line category " + one.name())
                                .orElse("");
                rows.add(draft.nominal(load.massKg())
                        .mend(kg > limitKg ? CarChoice.mend(leg, load).orElse("Take something off this car.") : null)
                        .atMost(
                                kg,
                                limitKg,
                                "kg",
                                load.name() + " carries up to " + Amounts.kg(kg) + "; the " + car.name() + " takes "
                                        + Amounts.kg(limitKg) + line + "."));
            }
        }
    }
}
