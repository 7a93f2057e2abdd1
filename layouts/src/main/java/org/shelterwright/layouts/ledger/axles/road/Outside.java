package org.shelterwright.layouts.ledger.axles.road;

import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Outside sizes of a vehicle (µm): the largest of what its data say and what its outline, and on the carrier the body, take up.
 * What sticks out of the body, such as antennas, is not in it.
 */
record Outside(int length, int width, int height) {
    static Outside of(Scene scene, VehicleLoads loads) {
        Carrier vehicle = loads.vehicle();
        Box body = loads.isTrailer() ? null : scene.body().outside().moved(vehicle.bodyAt());
        Box hull = body;
        for (Box box : vehicle.outline()) {
            hull = hull == null ? box : hull.hull(box);
        }
        return hull == null
                ? new Outside(vehicle.length(), vehicle.width(), 0)
                : new Outside(
                        Math.max(vehicle.length(), hull.x1() - hull.x0()),
                        Math.max(vehicle.width(), hull.y1() - hull.y0()),
                        hull.z1());
    }
}
