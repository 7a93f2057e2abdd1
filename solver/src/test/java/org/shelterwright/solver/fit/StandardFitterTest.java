package org.shelterwright.solver.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.solver.fit.distinct.Difference;
import org.shelterwright.solver.fit.planted.PlantedFit;

class StandardFitterTest {
    private final Checker checker = new Checker(new LimitBook(FitLimits.all()), List.of());
    private final Fitter fitter = new StandardFitter(checker);

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void findsPlantedFitWithTenPercentSlack(long seed) {
        PlantedFit planted = PlantedFit.of(seed, 20, 0.10);
        assertThat(checker.check(planted.solution()).worst()).isNotEqualTo(Verdict.BROKEN);

        FitResult result = fit(planted, seed, 1_200_000, 2, 1);

        assertThat(result.options().get(0).score().hard()).isZero();
        assertThat(result.options().get(0).ledger().count(Verdict.BROKEN)).isZero();
        assertThat(result.options().get(0).layout().placements()).hasSize(20);
    }

    @Test
    void givesTheSameLayoutsOnOneAndOnTwoThreads() {
        PlantedFit planted = PlantedFit.of(7, 15, 0.10);

        FitResult one = fit(planted, 42, 400_000, 1, 3);
        FitResult two = fit(planted, 42, 400_000, 2, 3);

        assertThat(layouts(two)).isEqualTo(layouts(one));
        assertThat(two.options()).isEqualTo(one.options());
    }

    @Test
    void offersTrulyDifferentLayouts() {
        FitResult result = fit(PlantedFit.of(5, 16, 0.15), 5, 1_600_000, 2, 3);

        assertThat(result.options()).hasSize(3);
        for (int i = 0; i < 3; i++) {
            for (int j = i + 1; j < 3; j++) {
                assertThat(Difference.between(
                                result.options().get(i).layout(),
                                result.options().get(j).layout()))
                        .isGreaterThanOrEqualTo(Choice.LEAST_DIFFERENCE);
            }
        }
    }

    @Test
    @Timeout(60)
    void stopsLongBeforeItsTimeIsUpAndKeepsTheBest() {
        PlantedFit planted = PlantedFit.of(3, 40, 0.05);
        StopSignal stop = new StopSignal();
        FitRequest request = new FitRequest(planted.question(), 3, Budget.time(Duration.ofMinutes(5)), 2, 1);

        FitResult result = fitter.fit(request, progress -> stop.stop(), stop);

        assertThat(result.options()).isNotEmpty();
        assertThat(result.options().get(0).layout().placements()).hasSize(40);
    }

    @Test
    @Timeout(60)
    void offersNothingWorseThanWhatStoodWhenStoppedAtOnce() {
        PlantedFit planted = PlantedFit.of(3, 20, 0.1);
        StopSignal stop = new StopSignal();
        stop.stop();
        FitRequest request = new FitRequest(planted.solution(), 3, Budget.moves(1_000_000), 2, 1);

        FitResult result = fitter.fit(request, progress -> {}, stop);

        assertThat(result.options().get(0).ledger().count(Verdict.BROKEN)).isZero();
    }

    @Test
    @Timeout(60)
    void placesWhatItCanAtOnceWhenStoppedBeforeItBegan() {
        PlantedFit planted = PlantedFit.of(3, 40, 0.05);
        StopSignal stop = new StopSignal();
        stop.stop();
        FitRequest request = new FitRequest(planted.question(), 3, Budget.time(Duration.ofMinutes(5)), 2, 1);

        FitResult result = fitter.fit(request, progress -> {}, stop);

        assertThat(result.options().get(0).layout().placements()).hasSize(40);
    }

    @Test
    void tellsOfEachBetterScoreInOrder() {
        List<FitScore> heard = Collections.synchronizedList(new ArrayList<>());

        fitter.fit(
                new FitRequest(PlantedFit.of(9, 15, 0.1).question(), 9, Budget.moves(400_000), 2, 1),
                progress -> heard.add(progress.best()),
                new StopSignal());

        assertThat(heard).isNotEmpty();
        assertThat(heard).isSortedAccordingTo(Collections.reverseOrder());
    }

    private FitResult fit(PlantedFit planted, long seed, long moves, int threads, int alternatives) {
        return fitter.fit(
                new FitRequest(planted.question(), seed, Budget.moves(moves), threads, alternatives),
                progress -> {},
                new StopSignal());
    }

    private static List<Object> layouts(FitResult result) {
        List<Object> layouts = new ArrayList<>();
        result.options().forEach(option -> layouts.add(option.layout()));
        return layouts;
    }
}
