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
            double x = Math.min(load.x1()[k], area.x1()) - (double) Math.max(load.x0()[k], area.x0());
            double y = Math.min(load.y1()[k], area.y1()) - (double) Math.max(load.y0()[k], area.y0());
            if (x > 0 && y > 0) {
                kg += loads[k] * (x / (load.x1()[k] - load.x0()[k])) * (y / (load.y1()[k] - load.y0()[k]));
            }
        }
        return new Demand(kg * FloorLoads.G / area.areaM2() / 1000, area.at(0, 0));
    }
}
