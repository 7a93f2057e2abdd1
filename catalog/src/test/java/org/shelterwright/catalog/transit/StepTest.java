package org.shelterwright.catalog.transit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StepTest {
    /** Straight to 3 500 mm, in to 785 mm at 4 650 mm, then level to the middle. */
    private static final List<Step> STEPS =
            List.of(mm(430, 1520), mm(1170, 1520), mm(1170, 1575), mm(3500, 1575), mm(4650, 785), mm(4650, 0));

    private static Step mm(int height, int halfWidth) {
        return new Step(height * 1000, halfWidth * 1000);
    }

    private static double least(double low, double high) {
        return Step.leastHalfWidth(STEPS, (int) (low * 1000), (int) (high * 1000)) / 1000.0;
    }

    @Test
    void takesTheNarrowestPlaceBetweenTwoHeights() {
        assertThat(least(1200, 3000)).isEqualTo(1575);
        assertThat(least(500, 3000)).isEqualTo(1520);
        // Half-way up the slope: (1575 + 785) / 2.
        assertThat(least(1200, 4075)).isEqualTo(1180);
        assertThat(least(4000, 4075)).isEqualTo(1180);
        assertThat(least(1200, 4650)).isEqualTo(785);
    }

    @Test
    void atALevelStepTheSideThatIsLookedAtCounts() {
        assertThat(least(1170, 2000)).isEqualTo(1575);
        assertThat(least(500, 1170)).isEqualTo(1520);
        assertThat(least(1170, 1170)).isEqualTo(1520);
    }

    @Test
    void thereIsNoRoomAboveOrBelow() {
        assertThat(Step.leastHalfWidth(STEPS, 1_200_000, 4_650_001)).isEqualTo(-1);
        assertThat(Step.leastHalfWidth(STEPS, 429_999, 2_000_000)).isEqualTo(-1);
        assertThat(Step.leastHalfWidth(List.of(), 0, 1)).isEqualTo(-1);
    }

    @Test
    void agreesWithManyLevelsLookedAtOneByOne() {
        Random random = new Random(4);
        for (int i = 0; i < 500; i++) {
            int low = 430_000 + random.nextInt(4_000_000);
            int high = low + 1 + random.nextInt(4_650_000 - low);
            int slow = Integer.MAX_VALUE;
            for (int k = 0; k <= 400; k++) {
                // Levels strictly inside, so that the ends of level steps do not matter.
                double at = low + (high - low) * (k + 0.5) / 401;
                slow = Math.min(slow, (int) width(at));
            }
            int fast = Step.leastHalfWidth(STEPS, low, high);

            assertThat(fast).as("seed 4, round %d", i).isBetween(slow - 6_000, slow + 1);
        }
    }

    private static double width(double at) {
        double found = 0;
        for (int i = 1; i < STEPS.size(); i++) {
            Step a = STEPS.get(i - 1);
            Step b = STEPS.get(i);
            if (b.height() > a.height() && at >= a.height() && at <= b.height()) {
                found = a.halfWidth() + (b.halfWidth() - a.halfWidth()) * (at - a.height()) / (b.height() - a.height());
            }
        }
        return found;
    }

    @Test
    void refusesStepsThatFall() {
        assertThatThrownBy(() -> Step.requireRising(List.of(mm(2000, 1500), mm(1000, 1500))))
                .hasMessage("The steps of an outline must follow from low to high: 1000 mm comes after 2000 mm.");
        assertThatThrownBy(() -> mm(1000, -1)).hasMessage("The half width of -1 mm must be at least 0.");
    }
}
