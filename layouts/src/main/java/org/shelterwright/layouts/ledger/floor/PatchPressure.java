package org.shelterwright.layouts.ledger.floor;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The mean pressure under each contact patch: {@code p = P g / A ≤ p_zone}. Units that stand on floor without a zone are not
 * assessed.
 *
 * <p>Source: the ratings of the floor zones in the catalog.
 */
final class PatchPressure extends PatchLimit {
    PatchPressure() {
        super("floor.patch-pressure", "Pressure under contact patches", "pressureKPa", "kPa", "presses with");
    }

    @Override
    @Nullable
    Double rating(FloorZone zone) {
        return zone.pressureKPa();
    }

    @Override
    double demand(double massKg, double areaM2) {
        return massKg * FloorLoads.G / areaM2 / 1000;
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        super.assess(scene, rows);
        Set<String> names = new LinkedHashSet<>();
        Set<String> ids = new LinkedHashSet<>();
        for (FloorSituation situation : FloorLoads.of(scene).situations()) {
            FloorCase load = situation.low();
            for (int k = 0; k < load.patches(); k++) {
                if (!load.people()[k] && !covered(scene, load, k)) {
                    PlacedUnit unit = load.units()[k];
                    names.add(unit.name());
                    ids.add(unit.id());
                }
            }
        }
        if (!names.isEmpty() && !scene.body().floorZones().isEmpty()) {
            rows.add(rows.draft(this, "Floor without rating")
                    .units(List.copyOf(ids))
                    .notAssessed(Wording.list(List.copyOf(names)) + (names.size() == 1 ? " stands" : " stand")
                            + " on floor that no zone rates. Extend floorZones in body "
                            + scene.body().id() + "."));
        }
    }

    private static boolean covered(Scene scene, FloorCase load, int k) {
        long shared = 0;
        for (FloorZone zone : scene.body().floorZones()) {
            long x = Math.min(load.x1()[k], zone.area().x1())
                    - (long) Math.max(load.x0()[k], zone.area().x0());
            long y = Math.min(load.y1()[k], zone.area().y1())
                    - (long) Math.max(load.y0()[k], zone.area().y0());
            shared += x > 0 && y > 0 ? x * y : 0;
        }
        return shared >= (long) (load.x1()[k] - load.x0()[k]) * (load.y1()[k] - load.y0()[k]);
    }
}
