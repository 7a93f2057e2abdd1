package org.shelterwright.solver.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

class StudyRunnerTest {
    private static final Checker CHECKER = SmallStudy.checker();
    private static final SealedStudy STUDY = SmallStudy.of(2, 400);

    @TempDir
    private Path folder;

    private StudyFolder folder(String name, SealedStudy study) {
        return StudyFolder.prepare(folder.resolve(name), study);
    }

    private static StudyProgress run(StudyFolder folder, int threads) {
        return new StudyRunner(CHECKER, new StandardFitter(CHECKER))
                .run(folder, threads, progress -> {}, new StopSignal());
    }

    private static List<RunResult> table(StudyFolder folder) {
        return folder.table().stream().map(RunResult::withoutTime).toList();
    }

    @Test
    void givesTheSameTableOnOneAndOnTwoThreads() {
        StudyFolder one = folder("one", STUDY);
        StudyFolder two = folder("two", STUDY);

        assertThat(run(one, 1).done()).isEqualTo(16);
        assertThat(run(two, 2).done()).isEqualTo(16);

        assertThat(table(one)).hasSize(16).isEqualTo(table(two));
        assertThat(table(one))
                .filteredOn(run -> run.settings().get("batteries").equals("far-too-tall"))
                .hasSize(4)
                .allSatisfy(run -> assertThat(run.refused()).startsWith("The unit \"battery-box\" cannot be placed: "));
    }

    @Test
    void everyLayoutThatIsKeptHasTheLedgerThatItsResultSays() {
        StudyFolder done = folder("done", STUDY);
        run(done, 2);

        for (RunResult result : done.table()) {
            if (result.refused() == null) {
                Layout layout = done.layout(result.run());
                Ledger ledger = SmallStudy.checker().check(layout);
                assertThat(result.verdict()).isEqualTo(ledger.worst());
                assertThat(result.counts().broken()).isEqualTo(ledger.count(Verdict.BROKEN));
                assertThat(result.counts().notAssessed()).isEqualTo(ledger.count(Verdict.NOT_ASSESSED));
                assertThat(layout.provenance().seed()).isEqualTo(result.seed());
            }
        }
    }

    @Test
    void whatAFinderSaysOfItsOwnLayoutCountsForNothing() {
        Fitter lying = (request, observer, stop) -> {
            Map<String, Placement> heap = new LinkedHashMap<>();
            new StandardFitter(CHECKER)
                    .fit(request, observer, stop)
                    .options()
                    .get(0)
                    .layout()
                    .placements()
                    .forEach((unit, placement) -> heap.put(unit, placement));
            Placement rack = heap.get("rack-1");
            heap.computeIfPresent("battery-box", (unit, old) -> old.withStation(rack.station()));
            Layout layout = request.start().withPlacements(heap);
            return new FitResult(
                    List.of(new FitOption(layout, new Ledger(List.of()), new FitScore(0, 0, 0))),
                    null,
                    1,
                    Duration.ZERO);
        };
        StudyFolder done = folder("lying", SmallStudy.of(1, 400));

        new StudyRunner(CHECKER, lying).run(done, 1, progress -> {}, new StopSignal());

        assertThat(done.table())
                .hasSize(8)
                .allSatisfy(run -> assertThat(run.verdict()).isEqualTo(Verdict.BROKEN));
    }

    @Test
    void stopsWithWhatIsDoneAndGoesOnFromThere() {
        StudyFolder whole = folder("whole", STUDY);
        StudyFolder parts = folder("parts", STUDY);
        run(whole, 2);
        StopSignal stop = new StopSignal();

        StudyProgress stopped = new StudyRunner(CHECKER, new StandardFitter(CHECKER))
                .run(
                        parts,
                        2,
                        progress -> {
                            if (progress.done() >= 5) {
                                stop.stop();
                            }
                        },
                        stop);
        int held = parts.table().size();
        StudyProgress ended = run(parts, 1);

        assertThat(stopped.done()).isEqualTo(held).isBetween(5, 7);
        assertThat(ended.fresh()).isEqualTo(16 - held);
        assertThat(table(parts)).isEqualTo(table(whole));
        assertThat(run(parts, 1).fresh()).isZero();
    }

    @Test
    void tellsHowFarItIsAndHowLongItWillTake() {
        List<StudyProgress> told = new ArrayList<>();

        new StudyRunner(CHECKER, new StandardFitter(CHECKER))
                .run(folder("told", SmallStudy.of(1, 400)), 1, told::add, new StopSignal());

        assertThat(told).extracting(StudyProgress::done).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(new StudyProgress(10, 4, 30, Duration.ofSeconds(20)).toGo()).isEqualTo(Duration.ofSeconds(100));
        assertThat(new StudyProgress(10, 0, 30, Duration.ofSeconds(20)).toGo()).isNull();
    }

    @Test
    void aRunThatFailsEndsTheStudyAndNamesItself() {
        AtomicInteger calls = new AtomicInteger();
        Fitter failing = (request, observer, stop) -> {
            if (calls.incrementAndGet() > 2) {
                throw new IllegalStateException("spoiled on purpose");
            }
            return new StandardFitter(CHECKER).fit(request, observer, stop);
        };
        StudyFolder done = folder("failing", SmallStudy.of(1, 400));

        assertThatThrownBy(() -> new StudyRunner(CHECKER, failing).run(done, 1, progress -> {}, new StopSignal()))
                .hasMessage("Run 4 of the study failed.")
                .hasRootCauseMessage("spoiled on purpose");
        assertThat(done.table()).extracting(RunResult::run).containsExactly(1, 2, 3);
    }
}
