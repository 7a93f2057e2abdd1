package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.planted.PlantedFit;

class ReachTest {
    private final Reach reach = new Reach(new StandardFitter(Checker.standard()), 2);

    @Test
    void endsWhenEveryLimitHoldsWithALayoutThatTheFullLedgerConfirms() {
        Reach.Run run = reach.toReach(PlantedFit.of(1, 8, 0.3).question(), 1, Duration.ofSeconds(20), Reach.ALL_MET);

        assertThat(run.reached()).isTrue();
        assertThat(run.best()).isNotNull();
        assertThat(run.best().ledger().count(Verdict.BROKEN)).isZero();
        assertThat(run.moves()).isPositive();
    }

    @Test
    void saysSoWhenTheGoalIsNotReached() {
        FitScore impossible = new FitScore(0, 0, 0);

        Reach.Run run = reach.toReach(PlantedFit.of(1, 6, 0.3).question(), 1, Duration.ofSeconds(1), impossible);

        assertThat(run.reached()).isFalse();
        assertThat(run.goalSeconds()).isNaN();
        assertThat(run.best()).isNotNull();
    }
}
