package org.shelterwright.layouts.ledger.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Battery;
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

    @Test
    void startsAreHeldAgainstThePeakOfWhatGivesThem() {
        // given sources of 16 kVA, 6 kVA and 400 A for a start: 16000/230, 6000/230 and 400 A
        TestNet engine = new TestNet()
                .supply(TestNet.supply("mains", Kind.GENERATOR, Current.AC, 230, null, 40.0, "set", List.of(), null))
                .plant("set", TestNet.generator(8000, 8000, null))
                .load("rack", TestNet.ac(920, 69.0));
        TestNet inverter = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .supply(TestNet.supply(
                        "inverter", Kind.CONVERTER, Current.AC, 230, null, 13.0, "box", List.of("mains"), null))
                .plant("box", TestNet.converter(new Converter(3000.0, 6000.0, null, null, 0.9, 20)))
                .load("rack", TestNet.ac(920, 27.0))
                .feed("rack", "inverter", null);
        TestNet battery = new TestNet()
                .supply(TestNet.supply("mains", Kind.BATTERY, Current.DC, 24, null, 60.0, "box", List.of(), null))
                .plant("box", TestNet.battery(new Battery(24, 100, 20, 1.2, 0.5, 400.0, 25.0, 28.8)))
                .load("winch", new Power("24 V dc", 240, null, 401.0, null, null, null, null));

        assertThat(engine.row(new StartCurrent()).capacity()).isCloseTo(69.565, within(0.001));
        assertThat(engine.row(new StartCurrent()).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(inverter.rows(new StartCurrent()))
                .filteredOn(row -> row.title().equals("Start on Inverter"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.capacity()).isCloseTo(26.087, within(0.001));
                    assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
                    assertThat(row.mend())
                            .isEqualTo("Switch it on before the others, limit its inrush, or choose a source with a"
                                    + " higher peak.");
                });
        assertThat(battery.row(new StartCurrent()).finding())
                .isEqualTo("When Winch starts, Mains gives 401 A of 400 A: 1 A too much.");
    }

    /** A motor of 6900 W in three phases takes 10 A of each line while it runs, and 30 A when it starts (by hand). */
    @Test
    void aMotorInThreePhasesStartsOnTheFullestLine() {
        Power motor = new Power("400 V ac", 6900, null, 30.0, null, 1.0, 3, null);
        TestNet test = new TestNet()
                .limit(Figure.START_FACTOR, 2)
                .supply(TestNet.shore(3, 16.0))
                .load("motor", motor)
                .load("oven", TestNet.ac(1150, 1.0))
                .feed("oven", "mains", 2);

        Row row = test.row(new StartCurrent());

        assertThat(row.demand()).as("5 A of the oven on L2, and 30 A").isCloseTo(35, within(1e-9));
        assertThat(row.capacity()).isEqualTo(32.0);
    }

    @Test
    void aUnitOnAnEmptierLineStartsThere() {
        // given 10 A on L1, and on L2 a unit of 1 A that takes 20 A when it starts
        TestNet test = new TestNet()
                .limit(Figure.START_FACTOR, 2)
                .supply(TestNet.shore(3, 16.0))
                .load("oven", TestNet.ac(2300, 10.0))
                .feed("oven", "mains", 1)
                .load("pump", TestNet.ac(230, 20.0))
                .feed("pump", "mains", 2);

        Row row = test.row(new StartCurrent());

        assertThat(row.demand()).isCloseTo(20, within(1e-9));
        assertThat(row.finding()).startsWith("When Pump starts");
    }

    /** A converter that passes the mains on starts its units from the breaker of the mains, whose rating is the lesser. */
    @Test
    void aConverterThatPassesTheMainsOnStartsFromTheMains() {
        TestNet test = new TestNet()
                .limit(Figure.START_FACTOR, 3)
                .supply(TestNet.shore(null, 10.0))
                .supply(TestNet.supply(
                        "inverter", Kind.CONVERTER, Current.AC, 230, null, 13.0, "box", List.of("mains"), null))
                .plant("box", TestNet.converter(new Converter(3000.0, 6000.0, 16.0, null, 0.9, 0)))
                .load("rack", TestNet.ac(920, 31.0))
                .feed("rack", "inverter", null)
                .state("day", null, null, "mains", "inverter");

        assertThat(test.rows(new StartCurrent())).hasSize(2).allSatisfy(row -> {
            assertThat(row.finding()).startsWith("When Rack starts");
            assertThat(row.demand()).isCloseTo(31, within(1e-9));
        });
        assertThat(test.rows(new StartCurrent()))
                .filteredOn(row -> row.title().equals("Start on Mains"))
                .singleElement()
                .satisfies(row -> assertThat(row.capacity()).isEqualTo(30.0));
        assertThat(test.rows(new StartCurrent()))
                .filteredOn(row -> row.title().equals("Start on Inverter"))
                .singleElement()
                .satisfies(row -> assertThat(row.capacity()).isEqualTo(39.0));
    }

    @Test
    void aPeakThatIsNotKnownIsNamedWithWhereToGiveIt() {
        TestNet shore = new TestNet().supply(TestNet.shore(null, null)).load("rack", TestNet.ac(920, 1.0));
        TestNet battery = new TestNet()
                .supply(TestNet.supply("mains", Kind.BATTERY, Current.DC, 24, null, 60.0, "box", List.of(), null))
                .plant("box", TestNet.battery(new Battery(24, 100, 20, 1.2, 0.5, null, 25.0, 28.8)))
                .load("radio", TestNet.dc(240));
        TestNet engine = new TestNet()
                .supply(TestNet.supply("mains", Kind.GENERATOR, Current.AC, 230, null, 40.0, null, List.of(), null))
                .load("rack", TestNet.ac(920, 1.0));

        assertThat(shore.row(new StartCurrent()).finding())
                .isEqualTo("What Mains gives while something starts is not known. Give its ratingA in the brief.");
        assertThat(battery.row(new StartCurrent()).finding())
                .isEqualTo(
                        "What Mains gives while something starts is not known. Give peakA in the item of its battery.");
        assertThat(engine.row(new StartCurrent()).finding())
                .startsWith("What Mains gives while something starts is not known. Give startVA in the item of its"
                        + " generator.");
        assertThat(shore.row(new SupplyLoad()).finding())
                .isEqualTo("The supply Mains has no rating. Give its ratingA in the brief.");
    }

    @Test
    void aSupplyThatIsNeverLiveBearsAndStartsNothing() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 10.0))
                .load("rack", TestNet.ac(920, 40.0))
                .state("day", null, null);

        assertThat(test.row(new SupplyLoad()).finding()).isEqualTo("Mains is not live in any state.");
        assertThat(test.row(new StartCurrent()).finding()).isEqualTo("Nothing starts on Mains.");
        assertThat(test.row(new StartCurrent()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aLineBearsItsMeanWhereItsUnitsRestPartOfTheTime() {
        // given 10 A, of which half in the mean
        Power oven = new Power("230 V ac", 2300, null, 1.0, null, null, null, 0.5);
        Row row = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("oven", oven)
                .row(new SupplyLoad());

        assertThat(row.demand()).isCloseTo(10, within(1e-9));
        assertThat(row.nominal()).isCloseTo(5, within(1e-9));
    }

    /** 12.5, 10 and 7.5 A lie at most a quarter off their mean of 10 A; 11, 11 and 8 A by a fifth, on the low side (by hand). */
    @Test
    void phasesAreComparedWithTheirMeanOnBothSides() {
        Row exact =
                phases(2875, 2300, 1725).limit(Figure.PHASE_DIFFERENCE, 0.25).row(new PhaseBalance());
        Row low = phases(2530, 2530, 1840).limit(Figure.PHASE_DIFFERENCE, 0.25).row(new PhaseBalance());
        Row over = phases(2880, 2300, 1720).limit(Figure.PHASE_DIFFERENCE, 0.25).row(new PhaseBalance());

        assertThat(exact.demand()).isEqualTo(0.25);
        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(low.demand()).isCloseTo(0.2, within(1e-12));
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.mend()).isEqualTo("Put a unit of the fullest phase on the emptiest.");
    }

    @Test
    void phasesWithNothingToCompareHold() {
        Row idle = new TestNet()
                .limit(Figure.PHASE_DIFFERENCE, 0.25)
                .supply(TestNet.shore(3, 16.0))
                .load("a", TestNet.ac(500, 1.0))
                .feed(new Feed("a", "mains", 1, List.of(), List.of("day"), List.of()))
                .row(new PhaseBalance());
        Row unset = phases(1, 1, 1).row(new PhaseBalance());
        Row single = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .row(new PhaseBalance());

        assertThat(idle.verdict()).isEqualTo(Verdict.MET);
        assertThat(idle.finding()).isEqualTo("Mains bears nothing in any state.");
        assertThat(unset.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unset.finding()).contains(Figure.PHASE_DIFFERENCE.id());
        assertThat(single.doesNotApply()).isTrue();
    }

    private static TestNet phases(double first, double second, double third) {
        return new TestNet()
                .supply(TestNet.shore(3, 16.0))
                .load("a", TestNet.ac(first, 1.0))
                .feed("a", "mains", 1)
                .load("b", TestNet.ac(second, 1.0))
                .feed("b", "mains", 2)
                .load("c", TestNet.ac(third, 1.0))
                .feed("c", "mains", 3);
    }

    @Test
    void aVoltageThatIsNotUnderstoodIsNotAssessed() {
        Power odd = new Power("mains", 100, null, 1.0, null, null, null, null);
        Row row = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("lamp", odd)
                .feed("lamp", "mains", null)
                .row(new SupplyAssigned());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo(
                        "The supply \"mains\" of item lamp is not understood. Write it with voltage and current, such"
                                + " as \"230 V ac\".");
    }

    @Test
    void everyUnitWithASupplyThatFitsItIsCounted() {
        Row row = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .load("lamp", TestNet.ac(50, 1.0))
                .row(new SupplyAssigned());

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("2 units that draw power have a supply that fits them.");
    }

    @Test
    void aMotorInThreePhasesDoesNotFitASupplyOfOne() {
        Power motor = new Power("230 V ac", 690, null, 30.0, null, 1.0, 3, null);
        Row row = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("motor", motor)
                .feed("motor", "mains", null)
                .row(new SupplyAssigned());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("Motor takes 230 V ac in three phases, and Mains does not give that.");
        assertThat(row.mend()).isEqualTo("Feed it from a supply of 230 V ac, or put a converter between.");
    }

    @Test
    void whatIsNotKnownOfAPairThatMustNotShareIsNamed() {
        TestNet rackOnly = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .item("box", TrialItem.of("box", 100, 100, 100));
        Row second = rackOnly.apart("rack", "box").row(new KeptApart());
        Row first = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .item("box", TrialItem.of("box", 100, 100, 100))
                .apart("box", "rack")
                .row(new KeptApart());
        Row open = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .item("desk", TrialItem.of("desk", 100, 100, 100).powerPort())
                .apart("rack", "desk")
                .row(new KeptApart());

        assertThat(second.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(second.finding())
                .isEqualTo("The unit box draws no power, and yet must not share a supply. Correct the pair in the"
                        + " brief.");
        assertThat(first.finding()).isEqualTo(second.finding());
        assertThat(open.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(open.finding()).startsWith("Desk has a port for power");
    }

    @Test
    void whatAsksForNothingHolds() {
        TestNet test = new TestNet().supply(TestNet.shore(null, 16.0)).load("rack", TestNet.ac(500, 1.0));

        assertThat(test.row(new NeededOn()).doesNotApply()).isTrue();
        assertThat(test.row(new KeptApart()).doesNotApply()).isTrue();
        assertThat(new TestNet().row(new NeededOn()).finding()).isEqualTo("No unit draws power.");
    }

    @Test
    void aUnitThatIsOnInOneStateAndOffInAnotherIsBrokenOnce() {
        TestNet test = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(500, 1.0))
                .feed(new Feed("rack", "mains", null, List.of(), List.of(), List.of("day", "night")))
                .state("day", null, null, "mains")
                .state("night", null, null);

        Row row = test.row(new NeededOn());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.units()).containsExactly("rack");
        assertThat(row.state()).isEqualTo("by night");
        assertThat(row.mend())
                .isEqualTo(
                        "Feed it from a supply that is live in that state, and state it neither idle nor off there.");
    }
}
