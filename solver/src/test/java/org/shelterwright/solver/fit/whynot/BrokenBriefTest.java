package org.shelterwright.solver.fit.whynot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.fit.WhyNot;
import org.shelterwright.solver.fit.planted.PlantedFit;

class BrokenBriefTest {
    private static final class Overloaded extends NamedLimit implements Limit.OfBrief {
        Overloaded() {
            super("test.load", Subject.POWER, "Load", Severity.HARD, Source.commonPractice("test"), "Held.");
        }

        @Override
        public void assess(Scene scene, Rows rows) {
            rows.add(rows.draft(this).atMost(11, 10, "A", "Mains bears 11 A of 10 A: 1 A too much."));
        }
    }

    @Test
    void whatIsBrokenWhereverUnitsStandIsToldAsAProof() {
        List<Limit> limits = new ArrayList<>(FitLimits.all());
        limits.add(new Overloaded());
        FitRequest request = new FitRequest(PlantedFit.of(1, 8, 0.15).question(), 1, Budget.moves(100_000), 1, 1);

        WhyNot whyNot = new StandardFitter(new Checker(new LimitBook(limits), List.of()))
                .fit(request, progress -> {}, new StopSignal())
                .whyNot();

        assertThat(whyNot).isNotNull();
        assertThat(whyNot.proven()).isTrue();
        assertThat(whyNot.reasons())
                .containsExactly("Wherever the units stand: Mains bears 11 A of 10 A: 1 A too much.");
    }
}
