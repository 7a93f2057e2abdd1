package org.shelterwright.app.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ScaleTest {
    @Test
    void marksAreRoundFewAndHoldAllFigures() {
        for (int seed = 0; seed < 2_000; seed++) {
            Random random = new Random(seed);
            double least = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 3);
            double most = least + random.nextDouble() * Math.pow(10, random.nextInt(9) - 3);

            Scale scale = Scale.over(least, most);

            double power = Math.pow(10, Math.floor(Math.log10(scale.step()) + 1e-9));
            assertThat(scale.step() / power)
                    .as("seed %d", seed)
                    .satisfiesAnyOf(
                            factor -> assertThat(factor).isCloseTo(1, within(1e-6)),
                            factor -> assertThat(factor).isCloseTo(2, within(1e-6)),
                            factor -> assertThat(factor).isCloseTo(5, within(1e-6)));
            assertThat(scale.marks()).as("seed %d", seed).hasSizeBetween(2, 9);
            assertThat(scale.share(least)).as("seed %d", seed).isBetween(-1e-6, 1 + 1e-6);
            assertThat(scale.share(most)).as("seed %d", seed).isBetween(-1e-6, 1 + 1e-6);
        }
    }

    @Test
    void oneFigureStandsInTheMiddle() {
        assertThat(Scale.over(2799.2, 2799.2).share(2799.2)).isBetween(0.2, 0.8);
        assertThat(Scale.over(0, 0).share(0)).isBetween(0.2, 0.8);
    }

    @Test
    void marksAreToldApart() {
        assertThat(Scale.over(0.9, 1.0).decimals()).isEqualTo(2);
        assertThat(Scale.over(2500, 5000).decimals()).isZero();
        assertThat(Scale.over(2500, 5000).marks()).containsExactly(2500.0, 3000.0, 3500.0, 4000.0, 4500.0, 5000.0);
    }

    @Test
    void countsGetWholeMarksAndRoomBesideThem() {
        assertThat(Scale.ofCounts(0, 0).marks()).containsExactly(0.0, 1.0);
        assertThat(Scale.ofCounts(1, 2).marks()).containsExactly(0.0, 1.0, 2.0, 3.0);
        assertThat(Scale.ofCounts(3, 3).marks()).containsExactly(2.0, 3.0, 4.0);
        assertThat(Scale.ofCounts(0, 40)).isEqualTo(Scale.over(0, 40));
        assertThat(Scale.ofCounts(1, 2).decimals()).isZero();
    }
}
