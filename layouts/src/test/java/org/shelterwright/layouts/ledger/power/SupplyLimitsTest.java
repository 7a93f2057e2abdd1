package org.shelterwright.layouts.ledger.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.power.TestNet;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.TrialItem;

class SupplyLimitsTest {
    @Test
    void aSupplyBearsTheSumOfItsLoadsUpToItsRating() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 10.0))
                .load("rack", TestNet.ac(1300, 1.0))
                .load("lamp", TestNet.ac(1000, 1.0));

        Row row = test.row(new SupplyLoad());

        assertThat(row.demand()).isCloseTo(10.0, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.state()).isEqualTo("by day");
        assertThat(row.finding()).isEqualTo("Mains bears 10 A of 10 A: 0 A are left.");
    }

    @Test
    void tooMuchLoadIsBrokenAndSaysByHowMuchAndWhatMendsIt() {
        TestNet test = new TestNet().supply(TestNet.shore(null, 10.0)).load("oven", TestNet.ac(2530, 1.0));

        Row row = test.row(new SupplyLoad());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("Mains bears 11 A of 10 A: 1 A too much.");
        assertThat(row.mend())
                .isEqualTo("Put a unit on another supply or phase, state in which states it is idle or off, or choose a"
                        + " supply with a higher rating.");
    }

    @Test
    void diversityReducesTheSumButNotBelowTheLargestLoadNorTheMean() {
        Power oven = new Power("230 V ac", 2300, null, 1.0, null, null, null, 0.3);
        TestNet largest = new TestNet()
                .limit(Figure.DIVERSITY, 0.5)
                .supply(TestNet.shore(null, 16.0))
                .load("oven", oven)
                .load("lamp", TestNet.ac(230, 1.0));
        TestNet mean = new TestNet()
                .limit(Figure.DIVERSITY, 0.5)
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(2300, 1.0))
                .load("lamp", TestNet.ac(230, 1.0));

        assertThat(largest.row(new SupplyLoad()).demand()).isCloseTo(10.0, within(1e-9));
        assertThat(mean.row(new SupplyLoad()).demand()).isCloseTo(11.0, within(1e-9));
    }

    @Test
    void theFullestPhaseGovernsAndIsNamed() {
        TestNet test = new TestNet()
                .limit(Figure.PHASE_DIFFERENCE, 0.25)
                .supply(TestNet.shore(3, 16.0))
                .load("oven", TestNet.ac(2300, 1.0))
                .feed("oven", "mains", 2)
                .load("rack", TestNet.ac(1150, 1.0))
                .feed("rack", "mains", 3);

        assertThat(test.row(new SupplyLoad()).finding()).isEqualTo("L2 of Mains bears 10 A of 16 A: 6 A are left.");
        Row balance = test.row(new PhaseBalance());
        assertThat(balance.demand()).as("0, 10 and 5 A about their mean of 5 A").isCloseTo(1.0, within(1e-9));
        assertThat(balance.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(balance.finding())
                .isEqualTo(
                        "The phases of Mains bear 0, 10, 5 A; the furthest is off the mean by 100 % of 25 %: 75 % too"
                                + " much.");
    }

    @Test
    void threePhaseLoadsSpreadOverAllLines() {
        Power motor = new Power("400 V ac", 6900, null, 30.0, null, 1.0, 3, null);
        TestNet test = new TestNet().supply(TestNet.shore(3, 16.0)).load("motor", motor);

        assertThat(test.row(new SupplyLoad()).demand()).isCloseTo(10.0, within(1e-9));
    }

    @Test
    void aUnitThatMayDrawFromSeveralSuppliesIsNotGuessed() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .supply(TestNet.supply(
                        "inverter", Kind.CONVERTER, Current.AC, 230, null, 13.0, "box", List.of("mains"), null))
                .plant("box", TestNet.converter(new Converter(3000.0, 6000.0, 16.0, null, 0.9, 20)))
                .load("rack", TestNet.ac(500, 10.0));

        Row assigned = test.row(new SupplyAssigned());

        assertThat(assigned.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(assigned.units()).containsExactly("rack");
        assertThat(assigned.finding())
                .isEqualTo("Rack takes 230 V ac, and the supplies mains, inverter all give that. Give its feed in the"
                        + " services of the brief.");
        assertThat(test.rows(new SupplyLoad())).extracting(Row::verdict).containsOnly(Verdict.NOT_ASSESSED);
    }

    @Test
    void aPortForPowerWithoutPowerDataIsAGap() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .item("desk", TrialItem.of("desk", 100, 100, 100).powerPort());

        Row row = test.row(new SupplyAssigned());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo(
                        "Desk has a port for power, but item desk does not say what it draws. Give \"power\" there.");
    }

    @Test
    void loadsWithoutSuppliesAreNotAssessedAndNoLoadsHold() {
        Row without = new TestNet().load("rack", TestNet.ac(500, 1.0)).row(new SupplyLoad());
        Row none = new TestNet().row(new SupplyLoad());

        assertThat(without.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(without.finding())
                .isEqualTo("1 unit may draw power, and the brief states no supplies. Give them in its services.");
        assertThat(none.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void theWrongVoltageIsBroken() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("lamp", TestNet.dc(30))
                .feed("lamp", "mains", null);

        Row row = test.row(new SupplyAssigned());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("Lamp takes 24 V dc, and Mains does not give that.");
    }

    @Test
    void theGreatestInrushStartsWhileTheOthersRun() {
        // given 4 A and 6 A that run, of which the first has an inrush of 40 A; a breaker stands 5 times 10 A
        TestNet test = new TestNet()
                .limit(Figure.START_FACTOR, 5)
                .supply(TestNet.shore(null, 10.0))
                .load("rack", TestNet.ac(920, 40.0))
                .load("oven", TestNet.ac(1380, 6.0));

        Row row = test.row(new StartCurrent());

        assertThat(row.demand()).isCloseTo(46, within(1e-9));
        assertThat(row.capacity()).isEqualTo(50.0);
        assertThat(row.finding()).isEqualTo("When Rack starts, Mains gives 46 A of 50 A: 4 A are left.");
    }

    @Test
    void anInrushThatIsNotKnownIsNamed() {
        TestNet test = new TestNet().supply(TestNet.shore(null, 10.0)).load("rack", TestNet.ac(920, null));

        Row row = test.row(new StartCurrent());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("The inrush of Rack is not known. Give inrushA in item rack.");
    }

    @Test
    void twoUnitsMustNotShareASupply() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .load("twin", TestNet.ac(500, 1.0))
                .apart("rack", "twin");

        Row row = test.row(new KeptApart());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.units()).containsExactly("rack", "twin");
        assertThat(row.finding()).isEqualTo("Rack and Twin both draw from Mains, and must not: one must stay on.");
        assertThat(row.mend()).isEqualTo("Feed one of them from another supply.");
    }

    @Test
    void theMendOfTwoUnitsThatShareASupplyHolds() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .supply(TestNet.supply("second", Kind.SHORE, Current.AC, 230, null, 16.0, null, List.of(), null))
                .load("rack", TestNet.ac(500, 1.0))
                .feed("rack", "mains", null)
                .load("twin", TestNet.ac(500, 1.0))
                .feed("twin", "second", null)
                .apart("rack", "twin");

        assertThat(test.row(new KeptApart()).verdict()).isEqualTo(Verdict.MET);
        assertThat(test.row(new KeptApart()).finding()).isEqualTo("Rack and Twin draw from Mains and Second.");
    }

    @Test
    void aUnitThatIsNeededButOffIsBroken() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .feed(new Feed("rack", "mains", null, List.of(), List.of(), List.of("night")))
                .state("day", null, null, "mains")
                .state("night", null, null);

        Row row = test.row(new NeededOn());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("The unit rack must be on by night, and is not.");
    }

    @Test
    void unitsThatAreOnWhereTheyAreNeededAreCounted() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .feed(new Feed("rack", "mains", null, List.of(), List.of(), List.of("day", "night")))
                .state("day", null, null, "mains")
                .state("night", null, null, "mains");

        Row row = test.row(new NeededOn());

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("Every unit is on in the states in which it is needed (2 cases).");
    }
}
