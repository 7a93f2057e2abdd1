package org.shelterwright.layouts.transport.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.transit.WheelGroup;

/** Held against the exact geometry of a car whose axles stand on a circle. */
class CurveThrowTest {
    private static List<WheelGroup> wheels(double pins, double spacing) {
        return List.of(
                new WheelGroup("1", 0, spacing > 0 ? 2 : 1, (int) Math.round(spacing * 1e6), 1_500_000, null),
                new WheelGroup(
                        "2",
                        (int) Math.round(pins * 1e6),
                        spacing > 0 ? 2 : 1,
                        (int) Math.round(spacing * 1e6),
                        1_500_000,
                        null));
    }

    /** Distance from the circle of a point of the line through both pins, each in the middle of its axles' chord. */
    private static double exact(double pins, double spacing, double x, double radius) {
        double pinRadius = Math.sqrt(radius * radius - spacing * spacing / 4);
        double chord = Math.sqrt(pinRadius * pinRadius - pins * pins / 4);
        double off = x - pins / 2;
        return Math.abs(radius - Math.hypot(chord, off));
    }

    @Test
    void agreesWithTheExactGeometry() {
        for (double radius : new double[] {150, 250, 500}) {
            for (double pins : new double[] {8, 14.86, 17}) {
                for (double spacing : new double[] {0, 1.8, 3}) {
                    for (double x : new double[] {-2.5, -1.5, pins / 4, pins / 2, pins - 1, pins + 2}) {
                        double formula = CurveThrow.metres(wheels(pins, spacing), (int) Math.round(x * 1e6), radius);

                        assertThat(formula)
                                .as("R %s, a %s, p %s, x %s", radius, pins, spacing, x)
                                .isCloseTo(exact(pins, spacing, x, radius), within(0.0008));
                    }
                }
            }
        }
    }

    /** Half-way between pins of 14.86 m on 250 m: 7.43² / 500 + 1.8² / 2000 = 112 mm. */
    @Test
    void isGreatestHalfWayBetweenThePins() {
        assertThat(CurveThrow.metres(wheels(14.86, 1.8), 7_430_000, 250)).isCloseTo(0.1120, within(0.0001));
    }

    /** 2 m beyond the pins of 10 m on 200 m: 2 · 12 / 400 = 60 mm, less the 4 m² / 1600 = 2.5 mm of a bogie of 2 m. */
    @Test
    void ofTwoDifferentBogiesTheWorseCounts() {
        List<WheelGroup> unlike = List.of(
                new WheelGroup("1", 0, 2, 3_000_000, 1_500_000, null),
                new WheelGroup("2", 10_000_000, 2, 2_000_000, 1_500_000, null));

        assertThat(CurveThrow.metres(unlike, 12_000_000, 200)).isCloseTo(0.0575, within(1e-9));
        assertThat(CurveThrow.metres(unlike, -2_000_000, 200)).isCloseTo(0.0575, within(1e-9));
        assertThat(CurveThrow.metres(unlike, 5_000_000, 200)).isCloseTo((25 + 2.25) / 400, within(1e-9));
    }
}
