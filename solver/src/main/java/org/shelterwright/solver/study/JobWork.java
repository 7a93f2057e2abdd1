package org.shelterwright.solver.study;

import java.time.Duration;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.JourneyDocument;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.study.Found;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.transport.JourneyPlanner;
import org.shelterwright.solver.transport.LoaderPacker;
import org.shelterwright.solver.transport.PlanRequest;
import org.shelterwright.solver.transport.PlanResult;

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
        Layout layout = job.start();
        JourneyDocument journey = job.journey();
        if (journey != null) {
            return planned(job, journey, start);
        }
        if (layout == null) {
            throw new IllegalArgumentException("The job of run " + job.run() + " holds nothing to do.");
        }
        FitRequest request = new FitRequest(layout, job.seed(), Budget.moves(job.moves()), 1, 1);
        FitResult found = fitter.fit(request, progress -> {}, stop);
        double seconds = seconds(start);
        if (found.options().isEmpty()) {
            return new JobResult(job.run(), Found.NONE, 0, found.moves(), seconds);
        }
        FitOption best = found.options().get(0);
        return new JobResult(job.run(), Found.of(best.layout()), best.score().soft(), found.moves(), seconds);
    }

    /** Plans a journey, whatever its budget in one go: positions and packing are quick. */
    private static JobResult planned(StudyJob job, JourneyDocument journey, long start) {
        JourneyChecker checker = JourneyChecker.standard();
        OpenedJourney opened = JourneyFiles.open(journey, checker.ruleSets());
        JourneyPlanner planner = new JourneyPlanner(checker, new LoaderPacker(new StandardLoader(), job.moves()));
        PlanResult found = planner.plan(new PlanRequest(opened.journey(), opened.parts(), job.seed()));
        return new JobResult(job.run(), Found.of(found.scene().journey()), 0, job.moves(), seconds(start));
    }

    private static double seconds(long start) {
        return Duration.ofNanos(System.nanoTime() - start).toMillis() / 1e3;
    }

    /** Does one job that came as a line and gives its result as a line. */
    public String done(String line) {
        return done(StudyJob.of(line), new StopSignal()).line();
    }
}
