package org.shelterwright.layouts.ledger.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Rect;

class PressurePlaneTest {
    private static final Offset<Double> EXACT = within(1e-9);

    @Test
    void fourFeetUnderACentredMassShareEqually() {
        assertThat(loads(feet(0, 900, 0, 900), 400, 0.5, 0.5))
                .containsExactly(new double[] {100, 100, 100, 100}, EXACT);
    }

    /** Bolt-group formula for small feet: P = W (1/4 + e r / Σ r²), here e = 0.1 m, r = 0.45 m, Σ r² = 4 · 0.45². */
    @Test
    void offTheMiddleTheNearFeetBearMore() {
        double[] loads = loads(feet(0, 900, 0, 900), 400, 0.6, 0.5);

        double small = 400 * 0.1 * 0.45 / (4 * 0.45 * 0.45 + 4 * 0.1 * 0.1 / 12);
        assertThat(loads).containsExactly(new double[] {100 - small, 100 - small, 100 + small, 100 + small}, EXACT);
    }

    @Test
    void loadsBalanceTheMassAndItsMoments() {
        List<Rect> patches =
                List.of(Rect.ofMm(0, 0, 200, 100), Rect.ofMm(700, 50, 800, 350), Rect.ofMm(300, 500, 380, 640));

        double[] loads = loads(patches, 90, 0.4, 0.2);

        assertThat(loads[0] + loads[1] + loads[2]).isCloseTo(90, EXACT);
        // the middles of patches whose own second moments are small beside their distances bear the moment nearly alone
        assertThat(loads[0] * 0.1 + loads[1] * 0.75 + loads[2] * 0.34).isCloseTo(90 * 0.4, within(90 * 0.02));
        assertThat(Arrays.stream(loads).min().orElseThrow()).isPositive();
    }

    @Test
    void onePatchBearsAll() {
        assertThat(loads(List.of(Rect.ofMm(0, 0, 600, 800)), 50, 0.1, 0.7)).containsExactly(50);
        assertThat(loads(List.of(Rect.ofMm(0, 0, 600, 800)), 50, 5, 5)).containsExactly(new double[] {50}, EXACT);
    }

    /** Two skids as under a beam: 1/4 and 3/4 for a mass at 3/4 of their distance, but for their own width. */
    @Test
    void twoSkidsShareAsSupportsOfABeam() {
        List<Rect> skids = List.of(Rect.ofMm(0, 0, 1000, 1), Rect.ofMm(0, 800, 1000, 801));

        double[] loads = loads(skids, 100, 0.5, 0.6005);

        assertThat(loads[0]).isCloseTo(25, within(1e-3));
        assertThat(loads[1]).isCloseTo(75, within(1e-3));
    }

    @Test
    void aFootThatWouldPullIsOffTheFloorAndTheOthersBearAll() {
        // given a mass right over one foot: the opposite one would pull
        double[] loads = loads(feet(0, 900, 0, 900), 100, 0.05, 0.05);

        assertThat(loads[3]).isZero();
        assertThat(loads[0] + loads[1] + loads[2]).isCloseTo(100, EXACT);
        assertThat(loads[0]).isGreaterThan(95);
        assertThat(Arrays.stream(loads).min()).hasValue(0);
    }

    @Test
    void aMassBesideAllFeetStandsOnTheNearestOne() {
        double[] loads = loads(feet(0, 900, 0, 900), 100, -3, -3);

        assertThat(loads).containsExactly(new double[] {100, 0, 0, 0}, EXACT);
    }

    @Test
    void anUncertainCentreLoadsTheFeetMore() {
        PressurePlane plane = new PressurePlane(feet(0, 900, 0, 900));

        double perMetre = 0.45 / (4 * 0.45 * 0.45 + 4 * 0.1 * 0.1 / 12);
        assertThat(plane.perMetreOff(0)).isCloseTo(2 * perMetre, EXACT);
    }

    /** Feet of 100 x 100 mm in the corners of a square of 1 m. */
    private static List<Rect> feet(int x0, int x1, int y0, int y1) {
        return List.of(foot(x0, y0), foot(x0, y1), foot(x1, y0), foot(x1, y1));
    }

    private static Rect foot(int x, int y) {
        return Rect.ofMm(x, y, x + 100, y + 100);
    }

    private static double[] loads(List<Rect> patches, double kg, double x, double y) {
        double[] loads = new double[patches.size()];
        new PressurePlane(patches).loads(kg, kg * x, kg * y, loads, 0);
        return loads;
    }
}
