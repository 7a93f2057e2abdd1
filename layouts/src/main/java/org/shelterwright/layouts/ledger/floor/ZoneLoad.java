package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.space.Rect;

/**
 * All that stands on a zone against its uniform load: {@code Σ P g / A_zone ≤ q}.
 *
 * <p>Source: the ratings of the floor zones in the catalog.
 */
final class ZoneLoad extends SpreadLimit {
    ZoneLoad() {
        super("floor.uniform", "Uniform load", "uniformKPa", "kPa");
    }

    @Override
    @Nullable
    Double rating(FloorZone zone) {
        return zone.uniformKPa();
    }

    @Override
    Demand demand(FloorZone zone, FloorCase load, double[] loads) {
        Rect area = zone.area();
        double kg = 0;
        for (int k = 0; k < load.patches(); k++) {
            kg += loads[k] * load.within(area, k);
        }
        return new Demand(kg * FloorLoads.G / area.areaM2() / 1000, area.at(0, 0));
    }

    @Override
    FloorCase governing(FloorZone zone, FloorSituation situation) {
        return situation.most(patch -> situation.low().within(zone.area(), patch));
    }
}
