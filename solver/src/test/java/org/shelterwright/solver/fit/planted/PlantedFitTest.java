package org.shelterwright.solver.fit.planted;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.FitProblem;

class PlantedFitTest {
    private final Checker checker = Checker.standard();

    @ParameterizedTest(name = "{0} units, slack {1}")
    @CsvSource({
        "4, 0.20",
        "10, 0.20",
        "10, 0.10",
        "10, 0.05",
        "20, 0.10",
        "40, 0.10",
        "60, 0.20",
        "60, 0.05",
        "80, 0.10"
    })
    void fullLedgerConfirmsTheKnownSolution(int units, double slack) {
        for (long seed = 1; seed <= 5; seed++) {
            PlantedFit fit = PlantedFit.of(seed, units, slack);

            Ledger ledger = checker.check(fit.solution());

            assertThat(broken(ledger)).as("seed %d", seed).isEmpty();
            assertThat(fit.solution().placements()).as("seed %d", seed).hasSize(units);
            assertThat(fit.question().placements()).as("seed %d", seed).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0} units, slack {1}")
    @CsvSource({"10, 0.20", "20, 0.10", "40, 0.05", "60, 0.10"})
    void leavesTheSlackOfTheWallsFree(int units, double slack) {
        for (long seed = 1; seed <= 5; seed++) {
            assertThat(PlantedFit.of(seed, units, slack).freeShare())
                    .as("seed %d", seed)
                    .isCloseTo(slack, within(0.01))
                    .isGreaterThanOrEqualTo(slack - 1e-4);
        }
    }

    @Test
    void putsUnitsIntoKneeSpaces() {
        for (long seed = 1; seed <= 5; seed++) {
            PlantedFit fit = PlantedFit.of(seed, 60, 0.1);

            List<UnitSpec> guests = fit.question().brief().units().stream()
                    .filter(unit -> unit.item().endsWith(Bank.GUEST))
                    .toList();

            assertThat(guests).as("seed %d", seed).hasSizeBetween(4, 6);
        }
    }

    @Test
    void searchScoresTheKnownSolutionAsFree() {
        PlantedFit fit = PlantedFit.of(3, 40, 0.05).withWishes();
        FitProblem problem = FitProblem.of(checker.scene(fit.solution()));
        State state = new State(problem);

        state.restore(problem.start());

        assertThat(state.score().hard()).isZero();
        assertThat(state.score().medium()).isZero();
        for (var term : problem.wishes()) {
            var a = problem.start()[term.a()];
            var b = problem.start()[term.b()];
            var oa = problem.slot(term.a()).options().get(a.option());
            var ob = problem.slot(term.b()).options().get(b.option());
            assertThat(term.shortfall(oa, a.x(), a.y(), a.z(), ob, b.x(), b.y(), b.z()))
                    .as("%s", term)
                    .isZero();
        }
        assertThat(problem.wishes()).hasSizeGreaterThan(10);
    }

    @Test
    void knownSolutionLiesOnTheAnchorsOfTheSearch() {
        PlantedFit fit = PlantedFit.of(2, 40, 0.1);
        FitProblem problem = FitProblem.of(checker.scene(fit.solution()));
        var start = problem.start();

        for (var slot : problem.slots()) {
            var spot = start[slot.index()];
            var option = slot.options().get(spot.option());
            assertThat(option.anchors(option.turn()).contains(new int[] {spot.x(), spot.y(), spot.z()}))
                    .as(slot.unit().id())
                    .isTrue();
        }
    }

    @Test
    void sameSeedPlantsTheSameFit() {
        assertThat(PlantedFit.of(4, 20, 0.1)).isEqualTo(PlantedFit.of(4, 20, 0.1));
        assertThat(PlantedFit.of(5, 20, 0.1)).isNotEqualTo(PlantedFit.of(4, 20, 0.1));
    }

    private static List<String> broken(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .map(Row::finding)
                .toList();
    }
}
