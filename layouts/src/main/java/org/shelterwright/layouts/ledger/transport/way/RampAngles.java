package org.shelterwright.layouts.ledger.transport.way;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.transport.scene.Shape;
import org.shelterwright.layouts.transport.scene.Wheel;

/**
 * The angles at which parts of a vehicle touch a ramp. A part at height z0 that ends e before the front axle touches at the foot of a
 * slope of {@code atan(z0/e)}; behind the rear axle likewise; between two axles, a and b from them, it touches on the crest of a slope of
 * {@code atan(z0/a) + atan(z0/b)}. Wheels touch at their axle, so the figures are on the safe side.
 *
 * @param approach before the front axle (degrees)
 * @param departure behind the rear axle (degrees)
 * @param crest between axles (degrees)
 */
record RampAngles(double approach, double departure, double crest) {
    /** The angles of a vehicle; 90 where nothing can touch. */
    static RampAngles of(Shape shape) {
        List<Wheel> axles =
                shape.wheels().stream().filter(wheel -> !wheel.support()).toList();
        double rear = axles.get(0).x();
        double front = axles.get(axles.size() - 1).x();
        boolean drawn = axles.size() < shape.wheels().size();
        double approach = 90;
        double departure = 90;
        double crest = 90;
        for (Box solid : shape.solids()) {
            if (solid.z0() <= 0) {
                continue;
            }
            if (!drawn) {
                approach = Math.min(approach, angle(solid.z0(), solid.x1() - front));
            }
            departure = Math.min(departure, angle(solid.z0(), rear - solid.x0()));
            for (int i = 1; i < axles.size(); i++) {
                crest = Math.min(
                        crest, crest(solid, axles.get(i - 1).x(), axles.get(i).x()));
            }
        }
        return new RampAngles(approach, departure, crest);
    }

    double least() {
        return Math.min(approach, Math.min(departure, crest));
    }

    String tightest() {
        return least() == crest ? "crest" : least() == departure ? "departure" : "approach";
    }

    private static double angle(double height, double reach) {
        return reach <= 0 ? 90 : Math.toDegrees(Math.atan2(height, reach));
    }

    private static double crest(Box solid, double rear, double front) {
        double low = Math.max(solid.x0(), rear);
        double high = Math.min(solid.x1(), front);
        if (low >= high) {
            return 90;
        }
        double at = Math.max(low, Math.min(high, (rear + front) / 2));
        return angle(solid.z0(), at - rear) + angle(solid.z0(), front - at);
    }
}
