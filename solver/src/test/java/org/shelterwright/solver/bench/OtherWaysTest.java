package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.bench.exact.ExactSearch;
import org.shelterwright.solver.bench.streams.StreamSearch;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.planted.PlantedFit;

class OtherWaysTest {
    private final Checker checker = Checker.standard();
    private final Judge judge = new Judge(checker);

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void constraintStreamsScoreAnyPlacesAsTheSearchDoes(long seed) {
        FitProblem problem = problem(PlantedFit.of(seed, 12, 0.1).withWishes().withoutWalkways());
        Dice dice = Dice.of(seed, 9);
        StreamSearch streams = new StreamSearch(problem);
        for (int i = 0; i < 20; i++) {
            Spot[] spots = anySpots(problem, dice);
            State state = new State(problem);

            state.restore(spots);

            assertThat(streams.score(spots)).as("round %d", i).isEqualTo(Judge.score(state.score()));
        }
    }

    @Test
    void constraintStreamsFindALooseFitThatTheLedgerConfirms() {
        FitProblem problem = problem(PlantedFit.of(1, 6, 0.4).withWishes().withoutWalkways());

        var found = new StreamSearch(problem).untilItHolds(Start.greedy(problem, 1), 1, Duration.ofSeconds(60));

        assertThat(judge.judge(found.layout()).score()).isEqualTo(found.score());
        assertThat(judge.judge(found.layout()).holds()).isTrue();
    }

    @Test
    void exactSolverFindsALooseFitThatTheLedgerConfirms() {
        FitProblem problem = problem(PlantedFit.of(1, 6, 0.4).withWishes().withoutWalkways());

        var found = new ExactSearch(problem).run(Start.greedy(problem, 1), 1, Duration.ofSeconds(60), 2);

        assertThat(found.layout()).isNotNull();
        assertThat(judge.judge(found.layout()).holds()).isTrue();
        assertThat(judge.judge(found.layout()).score().hard()).isZero();
        assertThat(judge.judge(found.layout()).score().medium()).isZero();
    }

    @Test
    void exactSolverKeepsWhatThereIsToKeep() {
        PlantedFit fit = PlantedFit.of(2, 5, 0.2).withWishes().withoutWalkways();
        FitProblem solved = problem(new PlantedFit(fit.solution(), fit.solution()));

        var found = new ExactSearch(solved).run(solved.start(), 1, Duration.ofSeconds(60), 2);

        assertThat(found.layout()).isNotNull();
        assertThat(judge.judge(found.layout()).score().soft())
                .isLessThanOrEqualTo(judge.judge(fit.solution()).score().soft());
    }

    @Test
    void latticeHoldsTheKnownSolutionAndNothingOffTheAnchors() {
        PlantedFit fit = PlantedFit.of(3, 20, 0.1);
        FitProblem problem = problem(new PlantedFit(fit.solution(), fit.solution()));
        for (Slot slot : problem.slots()) {
            Lattice lattice = new Lattice(slot);
            Spot planted = problem.start()[slot.index()];
            boolean seen = false;
            for (long i = 0; i < lattice.size(); i++) {
                Spot spot = lattice.spot(i);
                seen |= spot.equals(planted);
                assertThat(lattice.contains(spot)).isTrue();
            }
            assertThat(seen).as(slot.unit().id()).isTrue();
        }
    }

    private FitProblem problem(PlantedFit fit) {
        return FitProblem.of(checker.scene(fit.question()));
    }

    private static Spot[] anySpots(FitProblem problem, Dice dice) {
        return problem.slots().stream()
                .map(slot -> {
                    Lattice lattice = new Lattice(slot);
                    return lattice.spot(dice.below((int) lattice.size()));
                })
                .toArray(Spot[]::new);
    }
}
