package org.shelterwright.layouts.transport.scene;

import java.util.List;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.WheelGroup;

/**
 * How far a section of a car lies off the middle of a curved track. Both pins stand on the chord of the curve, shifted by the
 * versine of their bogies. At n from the nearer pin, with pin distance a, axle distance p and radius R, between the pins
 * {@code (n(a − n) + p²/4) / 2R} inward, beyond them {@code (n(a + n) − p²/4) / 2R} outward.
 * Of two different bogies the one counts that throws the section farther.
 *
 * <p>Source: the geometry of chords; the same terms stand in EN 15273 and UIC 505 (from memory).
 */
public final class CurveThrow {
    private CurveThrow() {}

    /**
     * The throw of a section.
     *
     * @param wheels two wheel groups, from rear to front
     * @param x place of the section along the car (µm)
     * @param radiusM radius of the curve (m)
     * @return metres; inward between the pins, outward beyond them; never below 0
     */
    public static double metres(List<WheelGroup> wheels, int x, double radiusM) {
        if (wheels.size() != 2) {
            throw new IllegalArgumentException("The throw in curves is told of cars with two wheel groups.");
        }
        WheelGroup rear = wheels.get(0);
        WheelGroup front = wheels.get(1);
        double a = Lengths.metres(front.x() - rear.x());
        double fromRear = Lengths.metres(x - rear.x());
        boolean between = fromRear >= 0 && fromRear <= a;
        double p = Lengths.metres(
                between ? Math.max(rear.spacing(), front.spacing()) : Math.min(rear.spacing(), front.spacing()));
        double n = between ? Math.min(fromRear, a - fromRear) : Math.max(-fromRear, fromRear - a);
        double way = between ? n * (a - n) + p * p / 4 : n * (a + n) - p * p / 4;
        return Math.max(0, way / (2 * radiusM));
    }
}
