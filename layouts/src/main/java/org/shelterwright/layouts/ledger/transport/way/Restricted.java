package org.shelterwright.layouts.ledger.transport.way;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.Restriction;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.Shape;

/** Bridges and narrow places of a way take what goes over them. Source: what the keeper of the way states. */
final class Restricted extends LegLimit {
    Restricted() {
        super(
                "restriction",
                "Bridges and narrow places",
                Source.stated("the keeper of the way", null),
                "This leg has no bridge or narrow place.");
    }

    /**
     * Something that goes over a way.
     *
     * @param grossKg mass (kg); {@code null} if not known, like the others
     */
    private record Goer(
            String name,
            List<String> units,
            @Nullable Double grossKg,
            @Nullable Double axleKg,
            @Nullable Double highMm,
            @Nullable Double wideMm) {}

    @Override
    public void assess(LegScene leg, Rows rows) {
        if (leg.leg().restrictions().isEmpty()) {
            return;
        }
        List<Goer> goers = new ArrayList<>();
        leg.drives().forEach(driven -> {
            goers.add(vehicle(driven.vehicle()));
            driven.trailer().ifPresent(trailer -> goers.add(vehicle(trailer)));
        });
        leg.outerLoads().forEach(load -> goers.add(car(load)));
        for (Restriction place : leg.leg().restrictions()) {
            for (Goer goer : goers) {
                for (Restriction.Asked asked : place.asks()) {
                    rows.add(row(leg, place, goer, asked, rows));
                }
            }
        }
    }

    private Row row(LegScene leg, Restriction place, Goer goer, Restriction.Asked asked, Rows rows) {
        RowDraft draft = draft(leg, rows, place.name() + ", " + goer.name()).units(goer.units());
        if (place.source() != null) {
            draft.source(Source.stated(place.source(), place.name()));
        }
        boolean mass = asked == Restriction.Asked.GROSS || asked == Restriction.Asked.AXLE;
        Double limit = switch (asked) {
            case GROSS -> place.grossKg();
            case AXLE -> place.axleKg();
            case HEIGHT -> mm(place.height());
            case WIDTH -> mm(place.width());
        };
        Double own = switch (asked) {
            case GROSS -> goer.grossKg();
            case AXLE -> goer.axleKg();
            case HEIGHT -> goer.highMm();
            case WIDTH -> goer.wideMm();
        };
        String what = asked.name().toLowerCase(Locale.ROOT);
        if (limit == null) {
            return draft.notAssessed(
                    "The " + what + " that " + place.name() + " takes is not known. Ask its keeper, and give"
                            + " it in the restrictions of leg " + leg.leg().id() + ".");
        }
        if (own == null) {
            return draft.notAssessed("The " + what + " of " + goer.name() + " cannot be told.");
        }
        String unit = mass ? "kg" : "mm";
        return draft.mend(own > limit ? "Go another way, or make it lighter or smaller." : null)
                .atMost(
                        own,
                        limit,
                        unit,
                        goer.name() + " at " + place.name() + ": " + what + " " + Amounts.number(own, 0) + " of "
                                + Amounts.number(limit, 0) + " " + unit + ".");
    }

    private static Goer vehicle(Shape shape) {
        double axle = shape.wheels().stream().mapToDouble(shape::mostKg).max().orElse(0);
        return new Goer(
                shape.name(),
                List.of(shape.id()),
                shape.massKg() == null ? null : Double.valueOf(shape.mostKg()),
                axle > 0 ? Double.valueOf(axle) : null,
                shape.size().z() / 1000.0,
                shape.size().y() / 1000.0);
    }

    private static Goer car(PlacedLoad load) {
        boolean known = load.unknown().isEmpty();
        Integer floor = load.car().deck().highest();
        Double high = floor == null
                ? null
                : load.hull().map(hull -> (floor + hull.z1()) / 1000.0).orElse(floor / 1000.0);
        int deck = load.car().deck().width();
        double wide = load.hull()
                .map(hull -> (Math.max(hull.y1(), deck) - Math.min(hull.y0(), 0)) / 1000.0)
                .orElse(deck / 1000.0);
        return new Goer(
                load.name(),
                load.ids(),
                known ? Double.valueOf(load.car().tareKg() + load.massKg() + load.uncertaintyKg()) : null,
                known ? CarStatics.of(load).map(CarStatics::greatestAxleKg).orElse(null) : null,
                high,
                wide);
    }

    private static @Nullable Double mm(@Nullable Integer micrometres) {
        return micrometres == null ? null : Double.valueOf(micrometres / 1000.0);
    }
}
