package org.shelterwright.solver.study;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.JourneyDocument;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyPlan;
import org.shelterwright.layouts.study.results.Judge;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/**
 * Gives out the jobs of a study and takes their results, whoever does them: what comes back is checked from scratch here, whatever
 * its finder said of it. Safe for several threads.
 */
public final class StudyDesk {
    private final SealedStudy study;
    private final StudyPlan plan;
    private final Judge judge;
    private final List<RuleSet> ruleSets;
    private final JourneyChecker journeys = JourneyChecker.standard();

    public StudyDesk(SealedStudy study, Checker checker) {
        this.study = study;
        this.plan = study.plan();
        this.judge = new Judge(checker, study.study());
        this.ruleSets = checker.ruleSets();
    }

    /**
     * A run is a job, or refused before anybody works at it.
     *
     * @param job {@code null} if it is refused
     * @param refused its result if it is refused; {@code null} otherwise
     */
    public record Start(@Nullable StudyJob job, @Nullable RunResult refused) {}

    /** Makes the job of a run. */
    public Start start(int number) {
        StudyPlan.Run run = plan.run(number);
        if (study.ofJourney()) {
            return journey(run);
        }
        Layout start;
        try {
            start = study.start(run);
        } catch (IllegalArgumentException e) {
            return refused(run, String.valueOf(e.getMessage()));
        }
        Optional<String> refusal = SealedStudy.refusal(start, ruleSets);
        return refusal.isPresent()
                ? refused(run, refusal.get())
                : new Start(new StudyJob(number, run.seed(), study.study().moves(), start), null);
    }

    private Start journey(StudyPlan.Run run) {
        try {
            OpenedJourney start = study.journeyStart(run, ruleSets);
            JourneyDocument document = JourneyFiles.whole(start.journey(), start.parts(), null);
            return new Start(
                    new StudyJob(run.number(), run.seed(), study.study().moves(), null, document), null);
        } catch (IllegalArgumentException e) {
            return refused(run, String.valueOf(e.getMessage()));
        }
    }

    /**
     * Takes what was found for a run, and checks it.
     *
     * @throws org.shelterwright.catalog.json.InputException if it does not fit the run
     */
    public RunResult take(JobResult found) {
        StudyPlan.Run run = plan.run(found.run());
        Judge.Effort effort = new Judge.Effort(found.wishes(), found.moves(), found.seconds());
        if (study.ofJourney()) {
            OpenedJourney planned = study.journeyWith(run, found.found(), ruleSets);
            JourneyScene scene = journeys.scene(planned.journey(), planned.parts());
            return judge.judge(run, scene, journeys.check(scene).all(), found.found(), effort);
        }
        Layout layout = study.with(run, found.found());
        return judge.judge(run, layout, effort);
    }

    private static Start refused(StudyPlan.Run run, String why) {
        return new Start(null, RunResult.refused(run.number(), run.ids(), run.seed(), why));
    }
}
