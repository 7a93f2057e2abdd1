package org.shelterwright.app.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DashesTest {

    @Test
    void aContinuousLineIsOneDash() {
        assertThat(Dashes.on(3, 10, new double[0])).containsExactly(new double[] {0, 10});
    }

    @Test
    void thePatternGoesOnOverABend() {
        double[] dashes = {4, 2};

        assertThat(Dashes.on(0, 9, dashes)).containsExactly(new double[] {0, 4}, new double[] {6, 9});
        assertThat(Dashes.on(9, 4, dashes)).containsExactly(new double[] {0, 1}, new double[] {3, 4});
    }
}
