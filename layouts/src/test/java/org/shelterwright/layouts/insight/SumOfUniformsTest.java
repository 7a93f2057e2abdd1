package org.shelterwright.layouts.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SumOfUniformsTest {
    @Test
    void oneFigureIsAStraightLine() {
        assertThat(SumOfUniforms.above(0.5, new double[] {2})).isCloseTo(0.375, within(1e-12));
        assertThat(SumOfUniforms.above(-2.5, new double[] {2})).isEqualTo(1);
        assertThat(SumOfUniforms.above(2, new double[] {2})).isZero();
    }

    @Test
    void twoEqualFiguresAreATriangle() {
        // Density (2 - |s|) / 4 on [-2, 2]: above 1 lies (2 - 1)^2 / 8.
        assertThat(SumOfUniforms.above(1, new double[] {1, 1})).isCloseTo(0.125, within(1e-12));
        assertThat(SumOfUniforms.above(-1, new double[] {1, 1})).isCloseTo(0.875, within(1e-12));
    }

    /** Volume of the corner of a cube that a plane cuts off: (3 - s)^3 / 48 for s from 1 to 3. */
    @Test
    void threeEqualFiguresCutTheCornerOffACube() {
        assertThat(SumOfUniforms.above(2, new double[] {1, 1, 1})).isCloseTo(1.0 / 48, within(1e-12));
        assertThat(SumOfUniforms.above(0, new double[] {1, 1, 1})).isCloseTo(0.5, within(1e-12));
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, table of the normal distribution (from memory). */
    @Test
    void theNormalTailIsThatOfTheTables() {
        assertThat(SumOfUniforms.normalAbove(0)).isCloseTo(0.5, within(1e-7));
        assertThat(SumOfUniforms.normalAbove(1)).isCloseTo(0.158655, within(1e-6));
        assertThat(SumOfUniforms.normalAbove(1.96)).isCloseTo(0.024998, within(1e-6));
        assertThat(SumOfUniforms.normalAbove(3)).isCloseTo(0.001350, within(1e-6));
        assertThat(SumOfUniforms.normalAbove(-1)).isCloseTo(0.841345, within(1e-6));
    }

    @Test
    void twelveFiguresAreNearlyNormalWhichIsTakenForMore() {
        double[] twelve = new double[12];
        Arrays.fill(twelve, 0.5);

        // The variance is 12 / 12 = 1.
        for (double bound : new double[] {0, 0.5, 1, 2}) {
            assertThat(SumOfUniforms.above(bound, twelve)).isCloseTo(SumOfUniforms.normalAbove(bound), within(3e-3));
        }
    }
}
