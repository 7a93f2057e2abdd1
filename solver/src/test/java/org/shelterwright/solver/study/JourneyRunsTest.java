package org.shelterwright.solver.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

/** A study over the cars of a journey. */
class JourneyRunsTest {
    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "cars", "name": "Cars", "journey": "sample:forty-crates",
             "axes": [{"id": "wagons", "settings": [
               {"id": "two-long", "cars": [{"load": "long", "count": 2}, {"load": "short", "count": 0}]},
               {"id": "two-flat", "cars": [
                 {"load": "long", "car": "flat-wagon-4-axle", "count": 2}, {"load": "short", "count": 0}]},
               {"id": "none", "cars": [{"load": "long", "count": 0}, {"load": "short", "count": 0}]}]}],
             "moves": 2000}
            """;

    private static List<RunResult> run(StudyFolder folder, int threads) {
        Checker checker = Checker.standard();
        new StudyRunner(checker, new StandardFitter(checker)).run(folder, threads, progress -> {}, new StopSignal());
        return folder.table().stream().map(RunResult::withoutTime).toList();
    }

    @Test
    void loadsTheJourneyWithEachMixAndJudgesItFromScratch(@TempDir Path folder) {
        SealedStudy study = new StudyFiles(BuiltInCatalog.read(), RuleSets.builtIn(), "1.0")
                .open(new InputFile("cars.json", STUDY.getBytes(StandardCharsets.UTF_8)), null)
                .study();
        StudyFolder one = StudyFolder.prepare(folder.resolve("one"), study);

        List<RunResult> runs = run(one, 1);

        assertThat(runs).hasSize(3).isEqualTo(run(StudyFolder.prepare(folder.resolve("two"), study), 2));
        assertThat(runs.get(0).refused()).isNull();
        assertThat(Measure.CARS.of(runs.get(0)).orElseThrow()).isBetween(1.0, 2.0);
        assertThat(Measure.GROSS.of(runs.get(0)).orElseThrow())
                .isGreaterThanOrEqualTo(Measure.MASS.of(runs.get(0)).orElseThrow() + 27_000);
        assertThat(Measure.LEFT.of(runs.get(2))).as("without cars all is left").isEqualTo(OptionalDouble.of(40));
        assertThat(runs.get(2).counts().broken() + runs.get(2).counts().notAssessed())
                .isPositive();
        JourneyChecker checker = JourneyChecker.standard();
        OpenedJourney planned = one.journey(1, checker.ruleSets());
        assertThat(checker.check(checker.scene(planned.journey(), planned.parts()))
                        .all()
                        .worst())
                .isEqualTo(runs.get(0).verdict());
    }

    @Test
    void aJobOfAJourneyIsALineThatAnyMachineCanDo() {
        SealedStudy study = new StudyFiles(BuiltInCatalog.read(), RuleSets.builtIn(), "1.0")
                .open(new InputFile("cars.json", STUDY.getBytes(StandardCharsets.UTF_8)), null)
                .study();
        StudyDesk desk = new StudyDesk(study, Checker.standard());
        StudyJob job = desk.start(1).job();
        assertThat(job).isNotNull();

        String done = JobWork.standard().done(job.line());

        RunResult taken = desk.take(JobResult.of(done));
        assertThat(taken.run()).isEqualTo(1);
        assertThat(taken.found()).isNotNull();
        assertThat(taken.found().loads()).isNotEmpty();
    }
}
