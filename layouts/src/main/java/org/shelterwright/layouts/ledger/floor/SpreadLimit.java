package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/** A limit of all patches in a zone together; a patch counts by the part of its area that lies in it. */
abstract class SpreadLimit extends ZoneLimit {
    private final String unit;

    SpreadLimit(String id, String title, String ratingName, String unit) {
        super(id, title, ratingName);
        this.unit = unit;
    }

    /**
     * What is demanded of a zone, and where most.
     *
     * @param place in the frame of the body
     */
    record Demand(double value, Box place) {}

    abstract Demand demand(FloorZone zone, FloorCase load, double[] loads);

    /** The load state in which most is demanded of a zone. */
    abstract FloorCase governing(FloorZone zone, FloorSituation situation);

    @Override
    void assess(Scene scene, FloorZone zone, double rating, Rows rows) {
        FloorLoads loads = FloorLoads.of(scene);
        Demand worst = null;
        FloorCase governing = null;
        for (FloorSituation situation : loads.situations()) {
            FloorCase load = governing(zone, situation);
            Demand demand = demand(zone, load, load.worst());
            if (worst == null || demand.value() > worst.value()) {
                worst = demand;
                governing = load;
            }
        }
        if (worst != null && governing != null) {
            RowDraft draft = draft(rows, zone);
            rows.add(
                    worst.value() <= rating && !loads.gaps().isEmpty()
                            ? GapRow.of(draft, loads.gaps())
                            : row(draft, zone, worst, governing, rating));
        }
    }

    private Row row(RowDraft draft, FloorZone zone, Demand worst, FloorCase load, double rating) {
        if (worst.value() > rating) {
            draft.mend("Move heavy units out of this part of " + zone.name() + ".");
        }
        return draft.place(worst.place())
                .state(load.state())
                .nominal(demand(zone, load, load.nominal()).value())
                .atMost(
                        worst.value(),
                        rating,
                        unit,
                        zone.name() + " bears " + Amounts.number(worst.value(), 2) + " " + unit + where(worst)
                                + "; allowed are " + Amounts.number(rating, 2) + " " + unit + ".");
    }

    /** More about the place, for the finding; may be empty. */
    String where(Demand worst) {
        return "";
    }

    @Override
    abstract @Nullable Double rating(FloorZone zone);
}
