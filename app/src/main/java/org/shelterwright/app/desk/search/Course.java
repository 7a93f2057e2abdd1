package org.shelterwright.app.desk.search;

import java.util.List;
import java.util.LongSummaryStatistics;
import org.shelterwright.solver.fit.FitProgress;
import org.shelterwright.solver.fit.FitScore;

/**
 * How high each score of a search stands in a picture of it: above the middle while limits lack, by powers of ten; below it once
 * all hold, by the wishes that still lack, from the most to the least of this search.
 */
final class Course {
    /** The line that is reached when nothing lacks any more. */
    static final double HOLDS = 0.5;

    /** From 1 mm to 100 m. */
    private static final double DECADES = 5;

    /** Between these lie the wishes. */
    private static final double MOST = 0.44;

    private static final double LEAST = 0.16;

    private final LongSummaryStatistics wishes;

    Course(List<FitProgress> steps) {
        wishes = steps.stream()
                .filter(step -> lacking(step.best()) == 0)
                .mapToLong(step -> step.best().soft())
                .summaryStatistics();
    }

    /** From 0 to 1. */
    double height(FitScore score) {
        double lackingMm = lacking(score) / 1000.0;
        if (lackingMm > 0) {
            return HOLDS + (1 - HOLDS) * Math.min(1, (0.6 + Math.log10(Math.max(1, lackingMm))) / DECADES);
        }
        double range = (double) wishes.getMax() - wishes.getMin();
        return range <= 0 ? MOST : LEAST + (MOST - LEAST) * (score.soft() - wishes.getMin()) / range;
    }

    private static long lacking(FitScore score) {
        return score.hard() + score.medium();
    }
}
