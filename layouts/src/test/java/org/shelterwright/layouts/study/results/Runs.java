package org.shelterwright.layouts.study.results;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyPlan;

/** Results of runs for tests. */
public final class Runs {
    private Runs() {}

    /** A run of a study with a use and a mass; everything else follows from its number. */
    public static RunResult of(SealedStudy study, int number, double use, double massKg) {
        StudyPlan.Run run = study.plan().run(number);
        return new RunResult(
                number,
                run.ids(),
                run.seed(),
                use > 1 ? Verdict.BROKEN : Verdict.MET,
                new RunResult.Counts(use > 1 ? 1 : 0, 0, number % 3, 40),
                new Governing(
                        "axles.axle",
                        "Rear axle",
                        List.of(),
                        "on the road",
                        6000 * use,
                        6000,
                        6000 * (1 - use),
                        use,
                        "kg"),
                measures(massKg, 10 + number / 7.0),
                100L * number,
                1000,
                0.5 * number,
                null,
                null);
    }

    static RunMeasures measures(@Nullable Double massKg, @Nullable Double freeM3) {
        return new RunMeasures(massKg, 9000.0, 2050.5, 1150.0, 880.0, 120.0, null, freeM3, null, null, null);
    }
}
