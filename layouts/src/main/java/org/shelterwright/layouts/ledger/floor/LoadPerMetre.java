package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;

/**
 * The heaviest running metre of a zone against its load per metre: {@code max over s of the load between s and s + 1 m ≤ m'}. A
 * zone shorter than 1 m is taken whole.
 *
 * <p>Source: the ratings of the floor zones in the catalog.
 */
final class LoadPerMetre extends SpreadLimit {
    LoadPerMetre() {
        super("floor.per-metre", "Load per running metre", "perMetreKg", "kg/m");
    }

    @Override
    @Nullable
    Double rating(FloorZone zone) {
        return zone.perMetreKg();
    }

    @Override
    Demand demand(FloorZone zone, FloorCase load, double[] loads) {
        Rect area = zone.area();
        StripLoad most = StripLoad.heaviest(area, load, loads);
        int to = Math.min(most.from() + Lengths.M, area.x1());
        double metres = Math.min(1, Lengths.metres(area.x1() - area.x0()));
        return new Demand(most.kg() / metres, new Rect(most.from(), area.y0(), to, area.y1()).at(0, 0));
    }

    @Override
    FloorCase governing(FloorZone zone, FloorSituation situation) {
        Rect area = zone.area();
        int from = StripLoad.heaviest(area, situation).from();
        Rect window = new Rect(from, area.y0(), Math.min(from + Lengths.M, area.x1()), area.y1());
        return situation.most(patch -> situation.low().within(window, patch));
    }

    @Override
    String where(Demand worst) {
        return " from " + Lengths.rounded(worst.place().x0(), 0) + " to "
                + Lengths.rounded(worst.place().x1(), 0) + " mm from the rear wall";
    }
}
