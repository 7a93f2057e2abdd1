package org.shelterwright.layouts.ledger.axles.road;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Coupling;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * An axle on the road.
 *
 * @param number of the axle on its vehicle, from zero
 * @param x its place in the frame of the carrier, the trailer coupled in line (µm)
 */
record RoadAxle(Axle axle, VehicleLoads vehicle, int number, int x) {
    /** The axles of one vehicle, from front to rear, as if its own frame were that of the road. */
    static List<RoadAxle> of(VehicleLoads vehicle) {
        return of(vehicle, 0);
    }

    /** The axles of the carrier and, if both have a coupling, of the trailer behind it. */
    static List<RoadAxle> combination(Scene scene) {
        List<RoadAxle> axles = new ArrayList<>();
        VehicleLoads carrier = VehicleLoads.carrier(scene).orElse(null);
        VehicleLoads trailer = VehicleLoads.trailer(scene).orElse(null);
        if (carrier != null) {
            axles.addAll(of(carrier));
            Coupling hook = carrier.vehicle().coupling();
            Coupling eye = trailer == null ? null : trailer.vehicle().coupling();
            if (trailer != null && hook != null && eye != null) {
                axles.addAll(of(trailer, hook.at().x() - eye.at().x()));
            }
        }
        return axles;
    }

    private static List<RoadAxle> of(VehicleLoads vehicle, int shift) {
        List<RoadAxle> axles = new ArrayList<>();
        List<Axle> own = vehicle.vehicle().axles();
        for (int i = 0; i < own.size(); i++) {
            axles.add(new RoadAxle(own.get(i), vehicle, i, own.get(i).x() + shift));
        }
        return axles;
    }

    /** Distance to an axle behind (µm). */
    int before(RoadAxle behind) {
        return x - behind.x;
    }

    Quantity load() {
        return vehicle.axleLoad(number);
    }

    static Quantity load(List<RoadAxle> axles) {
        Quantity sum = axles.get(0).load();
        for (RoadAxle axle : axles.subList(1, axles.size())) {
            sum = sum.plus(axle.load());
        }
        return sum;
    }

    /** Such as "axle 1" or "axles front axle to rear axle". */
    static String names(List<RoadAxle> axles) {
        String first = axles.get(0).axle.name();
        String last = axles.get(axles.size() - 1).axle.name();
        return axles.size() == 1 ? first : first + " to " + last;
    }
}
