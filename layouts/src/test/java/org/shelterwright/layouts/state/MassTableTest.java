package org.shelterwright.layouts.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Point;

class MassTableTest {
    @Test
    void theBoundIsTheLeastInfluenceTimesTheMassThatHelpsLeast() {
        MassTable table = new MassTable();
        table.addFixed(100, 10, Point.ofMm(1000, 0, 2000), 100_000);
        table.addFill(0, 5, 50, Point.ofMm(3000, 500, 1000));

        assertThat(table.lowerBound(Influence.MASS)).isCloseTo(95, within(1e-9));
        assertThat(table.lowerBound(Influence.MOMENT_X)).isCloseTo(95 * 0.9, within(1e-9));
        assertThat(table.lowerBound(Influence.MOMENT_Y)).isCloseTo(160 * -0.1, within(1e-9));
        assertThat(table.lowerBound(Influence.MOMENT_Z)).isCloseTo(95 * 1.0, within(1e-9));
        assertThat(new MassTable().lowerBound(Influence.MASS)).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noStateFallsBelowTheBoundAndTheNominalSumAgrees(long seed) {
        Random random = new Random(seed);
        MassTable table = new MassTable();
        for (int i = 0; i < 100; i++) {
            Point at = Point.ofMm(random.nextInt(4000) - 1000, random.nextInt(2000) - 500, random.nextInt(2000));
            if (i % 3 == 0) {
                table.addFill(i, random.nextDouble(), 1 + random.nextDouble(), at);
            } else {
                table.addFixed(random.nextDouble() * 50, random.nextDouble(), at, random.nextInt(50_000));
            }
        }
        Influence influence = new Influence(
                random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), 0.3);
        double nominal = 0;
        double least = 0;
        for (int i = 0; i < table.count(); i++) {
            double at = influence.at(table.x(i), table.y(i), table.z(i));
            nominal += table.nominal(i) * at;
            least += Math.min(table.least(i) * at, table.most(i) * at);
        }
        assertThat(table.nominal(influence)).as("seed " + seed).isCloseTo(nominal, within(1e-9));
        assertThat(table.lowerBound(influence)).as("seed " + seed).isLessThan(least);
    }
}
