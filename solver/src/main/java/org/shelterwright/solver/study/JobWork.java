package org.shelterwright.solver.study;

import java.time.Duration;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.Found;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

/** Does jobs, each on the thread that asks. The same job gives the same places wherever it is done. Safe for several threads. */
public final class JobWork {
    private final Fitter fitter;

    public JobWork(Fitter fitter) {
        this.fitter = fitter.withoutReasons();
    }

    /** The work of this program, with all its limits. */
    public static JobWork standard() {
        return new JobWork(new StandardFitter(Checker.standard()));
    }

    /** Does one job; what comes after the signal asked to stop is not to be used. */
    public JobResult done(StudyJob job, StopSignal stop) {
        long start = System.nanoTime();
        FitRequest request = new FitRequest(job.start(), job.seed(), Budget.moves(job.moves()), 1, 1);
        FitResult found = fitter.fit(request, progress -> {}, stop);
        double seconds = Duration.ofNanos(System.nanoTime() - start).toMillis() / 1e3;
        if (found.options().isEmpty()) {
            return new JobResult(job.run(), Found.NONE, 0, found.moves(), seconds);
        }
        FitOption best = found.options().get(0);
        return new JobResult(job.run(), Found.of(best.layout()), best.score().soft(), found.moves(), seconds);
    }

    /** Does one job that came as a line and gives its result as a line. */
    public String done(String line) {
        return done(StudyJob.of(line), new StopSignal()).line();
    }
}
