package org.shelterwright.layouts.ledger.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class OverlapTest {
    private final TrialItem rack = TrialItem.of("rack", 800, 600, 1800);

    @Test
    void touchingUnitsHold() {
        // given two racks face to face
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("one", rack, 0, 0)
                .floor("two", rack, 800, 0);
        // when, then
        assertThat(trial.rows(new Overlap()))
                .singleElement()
                .satisfies(row -> assertThat(row.verdict()).isEqualTo(Verdict.MET))
                .satisfies(row -> assertThat(row.finding()).isEqualTo("No two units overlap."));
    }

    @Test
    void saysWhatOverlapsByHowMuchAndTheLeastMoveThatMendsIt() {
        // given a rack that stands 38 mm into the other
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("one", rack, 0, 0)
                .floor("two", rack, 762, 100);
        // when
        Row row = trial.rows(new Overlap()).get(0);
        // then
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.units()).containsExactly("one", "two");
        assertThat(row.demand()).isEqualTo(38.0);
        assertThat(row.excess()).isEqualTo(38.0);
        assertThat(row.state()).isEqualTo("always");
        assertThat(row.place()).isEqualTo(Box.ofMm(762, 100, 0, 800, 600, 1800));
        assertThat(row.finding()).isEqualTo("Two stands 38 mm into One.");
        assertThat(row.mend()).isEqualTo("Move Two at least 38 mm forward.");
    }

    @Test
    void aPinnedUnitStaysAndTheOtherMoves() {
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("one", rack, 0, 0)
                .put("two", rack, Trial.onFloor(762, 100, QuarterTurn.R0), null, Pin.ALL);

        Row row = trial.rows(new Overlap()).get(0);

        assertThat(row.finding()).isEqualTo("One stands 38 mm into Two.");
        assertThat(row.mend()).isEqualTo("Move One at least 700 mm to the left.");
    }

    @Test
    void theWorseSituationGovernsAndIsNamed() {
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("one", rack, 0, 0)
                .put(
                        "two",
                        rack,
                        Trial.onFloor(795, 0, QuarterTurn.R0),
                        Trial.onFloor(780, 0, QuarterTurn.R0),
                        Pin.NONE);

        Row row = trial.rows(new Overlap()).get(0);

        assertThat(row.state()).isEqualTo("on the road");
        assertThat(row.demand()).isEqualTo(20.0);
    }

    @Test
    void aUnitUnderATableTopDoesNotOverlapTheTable() {
        TrialItem table = TrialItem.of("table", 800, 1600, 760)
                .solid(Box.ofMm(0, 0, 720, 800, 1600, 760))
                .solid(Box.ofMm(0, 0, 0, 800, 50, 720))
                .solid(Box.ofMm(0, 1550, 0, 800, 1600, 720));
        TrialItem box = TrialItem.of("box", 600, 600, 720);

        List<Row> under = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("table", table, 0, 0)
                .floor("box", box, 100, 50)
                .rows(new Overlap());
        List<Row> inLeg = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("table", table, 0, 0)
                .floor("box", box, 100, 49)
                .rows(new Overlap());

        assertThat(under.get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(inLeg.get(0).demand()).isEqualTo(1.0);
        assertThat(inLeg.get(0).mend()).isEqualTo("Move Box at least 1 mm to the left.");
    }
}
