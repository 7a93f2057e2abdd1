package org.shelterwright.layouts.ledger.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.body.CrossMember;

/** Formulas of the beam tables of AISC for simply supported beams; loads in kg, places in mm. */
class BeamSweepTest {
    private static final Offset<Double> EXACT = within(1e-9);

    /** Partial uniform load, 10 per metre over 0.5 m in the middle of 2 m: M = w b (2 L − b) / 8 = 2.1875. */
    @Test
    void aPartialLoadInTheMiddle() {
        BeamSweep sweep = sweep(2000, new int[] {750, 1250}, 5);

        assertThat(sweep.momentKgM()).isCloseTo(2.1875, EXACT);
        assertThat(sweep.shearKg()).isCloseTo(2.5, EXACT);
    }

    /** R1 = (w b / 2 L)(2 c + b); M = R1 (a + R1 / 2 w), with a before the load, b its length and c behind it. */
    @Test
    void aPartialLoadAnywhere() {
        double a = 0.3;
        double b = 0.8;
        double c = 0.9;
        double w = 7 / b;
        double r1 = w * b / (2 * (a + b + c)) * (2 * c + b);

        BeamSweep sweep = sweep(2000, new int[] {300, 1100}, 7);

        assertThat(sweep.momentKgM()).isCloseTo(r1 * (a + r1 / (2 * w)), EXACT);
        assertThat(sweep.shearKg()).isCloseTo(Math.max(r1, 7 - r1), EXACT);
    }

    /** Partial load at one end, length a: R1 = (w a / 2 L)(2 L − a), M = R1² / 2 w. */
    @Test
    void aPartialLoadAtOneEnd() {
        double w = 12 / 0.6;
        double r1 = w * 0.6 / (2 * 2) * (2 * 2 - 0.6);

        BeamSweep sweep = sweep(2000, new int[] {0, 600}, 12);

        assertThat(sweep.momentKgM()).isCloseTo(r1 * r1 / (2 * w), EXACT);
        assertThat(sweep.shearKg()).isCloseTo(r1, EXACT);
    }

    /** The whole length: w L² / 8; and a load on next to nothing in the middle: P L / 4. */
    @Test
    void theFullAndThePointLoadAreLimitsOfIt() {
        assertThat(sweep(2000, new int[] {0, 2000}, 20).momentKgM()).isCloseTo(10 * 2 * 2 / 8.0, EXACT);
        assertThat(sweep(2000, new int[] {1000, 1000}, 20, 1).momentKgM()).isCloseTo(20 * 2 / 4.0, within(1e-5));
    }

    /** Two equal loads at a from each end: M = P a, even between them. */
    @Test
    void twoEqualLoadsBendEvenlyBetweenThem() {
        BeamSweep sweep = BeamSweep.of(
                member(0, 3000),
                new int[] {0, 1, 2, 3},
                new int[] {900_000, 1_900_000},
                new int[] {1_100_000, 2_100_000},
                new double[] {8, 8});

        assertThat(sweep.momentKgM()).isCloseTo(8 * 1.0, EXACT);
        assertThat(sweep.shearKg()).isCloseTo(8, EXACT);
    }

    /** A load beyond a support, P at c from it: M = P c over the support. */
    @Test
    void whatHangsOverBendsOverTheSupport() {
        BeamSweep left = BeamSweep.of(
                member(1000, 3000), new int[] {0, 1}, new int[] {0}, new int[] {400_000}, new double[] {10});
        BeamSweep right = BeamSweep.of(
                member(0, 2000), new int[] {0, 1}, new int[] {2_600_000}, new int[] {3_000_000}, new double[] {10});

        assertThat(left.momentKgM()).isCloseTo(10 * 0.8, EXACT);
        assertThat(left.shearKg()).isCloseTo(10, EXACT);
        assertThat(right.momentKgM()).isCloseTo(10 * 0.8, EXACT);
        assertThat(right.shearKg()).isCloseTo(10, EXACT);
    }

    @Test
    void withoutLoadThereIsNothingToBear() {
        assertThat(BeamSweep.of(member(0, 2000), new int[0], new int[0], new int[0], new double[0]))
                .isEqualTo(new BeamSweep(0, 0));
    }

    /** Against moments taken at many sections by the plain definition: the sweep is never below them, and hardly above. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void agreesWithManySections(long seed) {
        Random random = new Random(seed);
        int count = 5;
        int[] low = new int[count];
        int[] high = new int[count];
        double[] loads = new double[count];
        for (int k = 0; k < count; k++) {
            low[k] = random.nextInt(1_800_000);
            high[k] = low[k] + 1 + random.nextInt(2_200_000 - low[k]);
            loads[k] = random.nextInt(100);
        }
        CrossMember member = member(200, 2000);

        BeamSweep sweep = BeamSweep.of(member, edges(low, high), low, high, loads);

        double worst = 0;
        double worstShear = 0;
        for (double y = 0; y <= 2.2; y += 0.0005) {
            worst = Math.max(worst, Math.abs(moment(y, low, high, loads)));
            worstShear = Math.max(
                    worstShear, Math.abs(moment(y + 1e-6, low, high, loads) - moment(y, low, high, loads)) / 1e-6);
        }
        assertThat(sweep.momentKgM())
                .as("seed " + seed)
                .isGreaterThanOrEqualTo(worst - 1e-9)
                .isCloseTo(worst, within(1e-3));
        assertThat(sweep.shearKg()).as("seed " + seed).isCloseTo(worstShear, within(0.3));
    }

    private static double moment(double y, int[] low, int[] high, double[] loads) {
        double total = 0;
        double about = 0;
        double own = 0;
        for (int k = 0; k < loads.length; k++) {
            double from = low[k] * 1e-6;
            double to = high[k] * 1e-6;
            total += loads[k];
            about += loads[k] * ((from + to) / 2 - 0.2);
            double part = Math.max(0, Math.min(to, y) - from) / (to - from) * loads[k];
            own += part * (y - (from + Math.min(to, Math.max(from, y))) / 2);
        }
        double right = about / 1.8;
        return (total - right) * Math.max(0, y - 0.2) + right * Math.max(0, y - 2) - own;
    }

    private static int[] edges(int[] low, int[] high) {
        return IntStream.range(0, 2 * low.length)
                .boxed()
                .sorted(Comparator.comparing(edge -> edge % 2 == 0 ? low[edge / 2] : high[edge / 2]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static BeamSweep sweep(int lengthMm, int[] fromTo, double kg) {
        return sweep(lengthMm, fromTo, kg, 0);
    }

    private static BeamSweep sweep(int lengthMm, int[] fromTo, double kg, int more) {
        int[] um = Arrays.stream(fromTo).map(mm -> mm * 1000).toArray();
        return BeamSweep.of(
                member(0, lengthMm), new int[] {0, 1}, new int[] {um[0]}, new int[] {um[1] + more}, new double[] {kg});
    }

    private static CrossMember member(int support0, int support1) {
        return new CrossMember("member", 0, support0 * 1000, support1 * 1000, null, null);
    }
}
