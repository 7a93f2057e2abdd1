package org.shelterwright.app.desk.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.solver.fit.FitProgress;
import org.shelterwright.solver.fit.FitScore;

class CourseTest {
    @Test
    void itGoesDownToTheFenceWhileLimitsLackAndBelowItWithTheWishes() {
        List<FitScore> scores = List.of(
                new FitScore(3_000_000, 0, 9_000_000),
                new FitScore(0, 20_000, 9_500_000),
                new FitScore(0, 0, 8_000_000),
                new FitScore(0, 0, 7_990_000));
        Course course = new Course(scores.stream()
                .map(one -> new FitProgress(1, Duration.ZERO, one))
                .toList());

        List<Double> heights = scores.stream().map(course::height).toList();

        assertThat(heights).isSortedAccordingTo((a, b) -> Double.compare(b, a)).doesNotHaveDuplicates();
        assertThat(heights.get(1)).isGreaterThan(Course.HOLDS);
        assertThat(heights.get(2)).isLessThan(Course.HOLDS);
        assertThat(heights).allMatch(height -> height > 0 && height < 1);
    }

    @Test
    void aSearchThatFindsNothingBetterStaysWhereItIs() {
        FitScore only = new FitScore(0, 0, 5_000);

        assertThat(new Course(List.of(new FitProgress(1, Duration.ZERO, only))).height(only))
                .isPositive()
                .isLessThan(Course.HOLDS);
    }
}
