package org.shelterwright.layouts.ledger.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.source.Source.Trust;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class RestraintLimitsTest {
    @Test
    void pushesInSixteenDirectionsAlongAnEllipse() {
        List<Push> pushes = Push.of(cases("road-eu"));

        assertThat(pushes).hasSize(16);
        assertThat(pushes.get(0).gx()).isCloseTo(0.8 * 1.25, within(1e-12));
        assertThat(pushes.get(4).gy()).isCloseTo(0.6 * 1.1, within(1e-12));
        assertThat(pushes.get(4).gx()).isZero();
        assertThat(pushes.get(8).gx()).isCloseTo(-0.5 * 1.1, within(1e-12));
        assertThat(pushes.get(2).gx()).isCloseTo(Math.sqrt(0.5) * 1.0, within(1e-12));
        assertThat(pushes).allMatch(push -> push.gz() == -1);
        assertThat(pushes)
                .extracting(Push::direction)
                .startsWith("forward", "22.5° left of forward", "45° left of forward")
                .contains("to the left", "45° left of rearward", "rearward", "to the right", "22.5° right of forward");
    }

    /** 49 CFR 393.102(a)(1), 14 CFR 25.561(b)(3) with (c)(2), MIL-STD-209K table I. */
    @Test
    void theCasesPushAsTheirSourcesSay() {
        List<Push> road = Push.of(cases("road-us"));
        List<Push> air = Push.of(cases("air-14-cfr-25"));
        List<Push> tieDown = Push.of(cases("tie-down-mil-std-209"));

        assertThat(of(road, "road-393-102-breaking", "forward").gx()).isEqualTo(0.8);
        assertThat(of(road, "road-393-102-working", "forward").gx()).isEqualTo(0.435);
        assertThat(of(air, "air-25-561", "forward").gx()).isCloseTo(9 * 1.33, within(1e-12));
        assertThat(of(air, "air-25-561", "up").gz()).isCloseTo(3 * 1.33, within(1e-12));
        assertThat(of(air, "air-25-561", "down").gz()).isCloseTo(-6 * 1.33, within(1e-12));
        assertThat(of(tieDown, "tie-down-209-design", "rearward").gx()).isEqualTo(-4);
        assertThat(of(tieDown, "tie-down-209-ultimate", "to the left").gy()).isEqualTo(2.25);
    }

    @Test
    void casesThatNobodyReadSaySo() {
        assertThat(cases("rescue-vehicle")).allMatch(one -> one.source().trust() == Trust.FROM_MEMORY);
        assertThat(cases("sea-ctu")).allMatch(one -> one.source().trust() == Trust.FROM_MEMORY);
    }

    @Test
    void aLooseUnitThatItsStrapDoesNotHoldIsTold() {
        TrialItem crate = TrialItem.of("crate", 600, 400, 300)
                .mass(40.0, Point.ofMm(300, 200, 150))
                .roadHold(300);

        Row row = Trial.in(Pushed.body(1, 1))
                .rules(Pushed.forward(1))
                .floor("crate", crate, 1000, 1000)
                .rows(new LooseHold())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo(
                        "Crate pushes with 392 N under own case, forward, and what holds it on the road bears 300 N.");
        assertThat(row.mend())
                .isEqualTo("Hold Crate by straps or latches that bear at least 392 N, or stow it elsewhere.");
    }

    @Test
    void aLooseUnitWithoutAStatedHoldIsNotAssessed() {
        Row row = Trial.in(Pushed.body(1, 1))
                .rules(Pushed.forward(1))
                .floor("crate", TrialItem.of("crate", 600, 400, 300), 1000, 1000)
                .rows(new LooseHold())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("What holds Crate on the road is not stated.");
    }

    @Test
    void theUnitWithTheFewestFixingsIsNamed() {
        TrialItem post = TrialItem.of("post", 200, 200, 500).fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10");

        Row row = Trial.in(Pushed.body(1, 1))
                .limit(Figure.LEAST_FIXINGS, 2)
                .floor("post", post, 950, 950)
                .floor("cabinet", Pushed.cabinet(10, "M10"), 2000, 1000)
                .rows(new FixingCount())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("Post has the fewest fixings of all bolted units: 1.");
        assertThat(row.mend()).isEqualTo("Give Post at least 1 fixing more.");
    }

    @Test
    void unitsThatPullOnTheSameMetreAddUp() {
        Trial trial = Trial.in(Pushed.body(50_000, 50_000)).rules(Pushed.forward(3));
        double alone = pull(trial.floor("first", Pushed.cabinet(600, "M10"), 1000, 500));
        Row both = trial.floor("second", Pushed.cabinet(600, "M10"), 1000, 1000)
                .rows(new PullPerMetre(Pushed.FASTENERS))
                .get(0);

        assertThat(both.demand()).isCloseTo(2 * alone, within(1e-6));
        assertThat(both.units()).containsExactly("first", "second");
        assertThat(both.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(both.finding())
                .startsWith("First and Second together pull with ")
                .endsWith(" N on the most laden metre of floor grid, which bears 20000 N.");
    }

    private static double pull(Trial trial) {
        return Objects.requireNonNull(
                trial.rows(new PullPerMetre(Pushed.FASTENERS)).get(0).demand());
    }

    /** K F d: 0.190 in, 1275 lb, K 0.3 to 0.1 (Mechanical Fastening, Joining, and Assembly, p. 85). */
    @Test
    void torqueAgreesWithThePublishedTable() {
        Map<Double, Double> published = Map.of(0.3, 72.7, 0.25, 60.6, 0.2, 48.5, 0.15, 36.3, 0.1, 24.2);
        double poundN = 0.45359237 * Pushed.G;
        double inchPound = poundN * 0.0254;

        published.forEach(
                (factor, inchPounds) -> assertThat(Torque.newtonMetres(factor, 1275 * poundN, 0.19 * 25.4) / inchPound)
                        .as("K " + factor)
                        .isCloseTo(inchPounds, within(0.06)));
        assertThat(Torque.newtonMetres(0.2, 0.75 * 33_700, 10)).isCloseTo(50.6, within(0.06));
    }

    @Test
    void aRoofUnitHangsOnItsFixings() {
        TrialItem lamp = TrialItem.of("lamp", 600, 200, 100)
                .on(Surface.ROOF)
                .mass(8.0, Point.ofMm(300, 100, 50))
                .fixing(Point.ofMm(100, 100, 100), Face.TOP, "M10")
                .fixing(Point.ofMm(500, 100, 100), Face.TOP, "M10");
        Trial trial = Trial.in(Pushed.body(1, 1)
                        .grid(
                                "roof rail",
                                Face.TOP,
                                Point.ofMm(100, 100, 2000),
                                Axis.X,
                                50,
                                70,
                                1,
                                new Strength(1000.0, 1000.0, null)))
                .rules(Pushed.forward(1))
                .put("lamp", lamp, Trial.at(Surface.ROOF, 1000, 0, 1900, QuarterTurn.R0));

        Row row = trial.rows(Pushed.STRENGTH).get(0);

        double weight = 8 * Pushed.G;
        assertThat(row.demand()).isGreaterThan(weight / 2 / 1000 + weight / 2 / 1000 - 1e-9);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aCasePushesOnlyWhereItSaysAndStraightAlongTheAxes() {
        List<Push> ahead = Push.of(List.of(own(1, 0, 0, 1, 1)));
        List<Push> ends = Push.of(List.of(own(1, 0.5, 0, 1, 1)));
        List<Push> sides = Push.of(List.of(own(0, 0, 1, 1, 1)));
        List<Push> rearAndSides = Push.of(List.of(own(0, 0.5, 1, 1, 1)));

        assertThat(ahead).extracting(Push::direction).containsExactly("forward");
        assertThat(ends).extracting(Push::direction).containsExactly("forward", "rearward");
        assertThat(ends.get(1).gy()).isZero();
        assertThat(sides).extracting(Push::direction).containsExactly("to the left", "to the right");
        assertThat(sides).extracting(Push::gx).containsOnly(0.0);
        assertThat(rearAndSides).hasSize(15).extracting(Push::direction).doesNotContain("forward");
    }

    /** Rail with ±0.3 g about the weight, as in the IMO/ILO/UNECE guidelines of 1997: 0.7 g and 1.3 g go with a push sideways. */
    @Test
    void aPushComesWithTheLeastAndWithTheGreatestWeight() {
        List<Push> pushes = Push.of(List.of(own(0, 0, 0.5, 0.7, 1.3)));

        assertThat(pushes)
                .extracting(Push::direction)
                .containsExactly(
                        "to the left", "to the left, pressed down", "to the right", "to the right, pressed down");
        assertThat(pushes).extracting(Push::gz).containsExactly(-0.7, -1.3, -0.7, -1.3);
    }

    private static LoadCase own(double forward, double rearward, double sideways, double leastDown, double mostDown) {
        return new LoadCase(
                "own",
                "own case",
                forward,
                rearward,
                sideways,
                0,
                0,
                leastDown,
                mostDown,
                1,
                1,
                LoadCase.Basis.PROOF,
                Source.stated("House rule", null));
    }

    @Test
    void aLooseUnitIsHeldByExactlyItsPushAndNotByOneNewtonLess() {
        double push = 2 * 50 * Pushed.G;
        Trial exact = Trial.in(Pushed.body(1, 1))
                .rules(Pushed.forward(2))
                .floor("crate", filled().roadHold(push), 1000, 1000);
        Trial less = Trial.in(Pushed.body(1, 1))
                .rules(Pushed.forward(2))
                .floor("crate", filled().roadHold(push - 1), 1000, 1000);

        assertThat(exact.rows(new LooseHold()).get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(exact.rows(new LooseHold()).get(0).finding())
                .isEqualTo("What holds each loose unit on the road bears it.");
        assertThat(less.rows(new LooseHold()).get(0).verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** 40 kg and a tank of 10 kg. */
    private static TrialItem filled() {
        return TrialItem.of("crate", 600, 400, 300)
                .mass(40.0, Point.ofMm(300, 200, 150))
                .tank(1, 10);
    }

    @Test
    void aLooseUnitIsHeldDownToo() {
        LoadCase lifted = new LoadCase(
                "own", "own case", 0, 0, 0, 3, 0, 1, 1, 1, 1, LoadCase.Basis.PROOF, Source.stated("House rule", null));

        Row row = Trial.in(Pushed.body(1, 1))
                .rules(Pushed.set(lifted))
                .floor("crate", filled().roadHold(1), 1000, 1000)
                .rows(new LooseHold())
                .get(0);

        assertThat(row.demand()).isCloseTo(3 * 50 * Pushed.G, within(1e-9));
        assertThat(row.state()).isEqualTo("own case, up");
    }

    @Test
    void whatALooseUnitNeedsToBeJudgedIsNamed() {
        Row massless = Trial.in(Pushed.body(1, 1))
                .rules(Pushed.forward(1))
                .floor("crate", filled().mass(null, null).roadHold(1), 1000, 1000)
                .rows(new LooseHold())
                .get(0);
        Row noCase = Trial.in(Pushed.body(1, 1))
                .floor("crate", filled().roadHold(1), 1000, 1000)
                .rows(new LooseHold())
                .get(0);

        assertThat(massless.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(massless.finding()).isEqualTo("The mass of Crate is not stated.");
        assertThat(massless.mend()).isEqualTo("State the mass of item crate.");
        assertThat(noCase.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(noCase.finding())
                .isEqualTo("No load case is set: no chosen rule set says by how much the load is pushed.");
    }

    @Test
    void asManyFixingsAsNeededAreMetAndTheFirstOfEqualsIsNamed() {
        Trial trial = Trial.in(Pushed.body(1, 1))
                .limit(Figure.LEAST_FIXINGS, 4)
                .floor("cabinet", Pushed.cabinet(10, "M10"), 2000, 1000)
                .floor("second", Pushed.cabinet(10, "M10"), 1000, 1000);

        Row row = trial.rows(new FixingCount()).get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.mend()).isNull();
        assertThat(row.units()).containsExactly("cabinet");
    }

    @Test
    void fixingsAreNotCountedWhereThereAreNoneOrNoFigure() {
        Row none = Trial.in(Pushed.body(1, 1))
                .limit(Figure.LEAST_FIXINGS, 2)
                .floor("crate", filled(), 1000, 1000)
                .rows(new FixingCount())
                .get(0);
        Row unset = Trial.in(Pushed.body(1, 1))
                .floor("cabinet", Pushed.cabinet(10, "M10"), 2000, 1000)
                .rows(new FixingCount())
                .get(0);

        assertThat(none.verdict()).isEqualTo(Verdict.MET);
        assertThat(none.finding()).isEqualTo("No unit is bolted.");
        assertThat(unset.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unset.finding()).contains(Figure.LEAST_FIXINGS.id());
    }

    /**
     * Two pairs of bolts of a cabinet bear 2P and 2p, with p = P/11 by their levers of 550 and 50 mm. Two cabinets 1 m apart have three
     * pairs on one metre with its ends, 4P + 2p; 50 mm farther apart there are never more than two, 2P + 2p.
     */
    @Test
    void aMetreCountsWithItsEnds() {
        double alone = pull(cabinetsApart(null));
        double metre = pull(cabinetsApart(2000));
        double more = pull(cabinetsApart(2050));

        double pair = alone / (1 + 1 / 11.0);
        assertThat(metre).isCloseTo(2 * pair + pair / 11, within(1e-6));
        assertThat(more).isCloseTo(alone, within(1e-6));
    }

    private static Trial cabinetsApart(@Nullable Integer second) {
        Trial trial = Trial.in(Pushed.body(50_000, 50_000))
                .rules(Pushed.forward(3))
                .floor("first", Pushed.cabinet(600, "M10"), 1000, 500);
        return second == null ? trial : trial.floor("second", Pushed.cabinet(600, "M10"), second, 500);
    }

    @Test
    void aMetreThatBearsExactlyWhatPullsIsCloseAndNeedsNoMend() {
        double pullN = 1000 * pull(cabinetsApart(null));

        Row exact = perMetre(pullN + 1e-6);
        Row less = perMetre(pullN - 1);
        Row unknown = perMetre(null);

        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(less.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(less.mend()).isEqualTo("Spread the units that pull there over a greater length or several rails.");
        assertThat(unknown.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unknown.finding()).isEqualTo("The pull-out strength per metre of floor grid is not stated.");
    }

    private static Row perMetre(@Nullable Double bearsN) {
        TrialBody body = TrialBody.of(4000, 2000, 2000)
                .grid(
                        "floor grid",
                        Face.BOTTOM,
                        Point.ofMm(50, 50, 0),
                        Axis.X,
                        50,
                        79,
                        39,
                        new Strength(50_000.0, 50_000.0, bearsN));
        return Trial.in(body)
                .rules(Pushed.forward(3))
                .floor("first", Pushed.cabinet(600, "M10"), 1000, 500)
                .rows(new PullPerMetre(Pushed.FASTENERS))
                .get(0);
    }

    @Test
    void aUnitOfWhichTheFixingsAreNotKnownLeavesTheMetreOpen() {
        TrialItem half = Pushed.cabinet(100, "M10").ungraded(Point.ofMm(300, 50, 0), Face.BOTTOM, "M10");
        Row row = Trial.in(Pushed.body(50_000, 50_000))
                .rules(Pushed.forward(1))
                .floor("cabinet", half, 1000, 500)
                .rows(new PullPerMetre(Pushed.FASTENERS))
                .get(0);
        Row noCase = Trial.in(Pushed.body(50_000, 50_000))
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 500)
                .rows(new PullPerMetre(Pushed.FASTENERS))
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("The pull of Cabinet is not known.");
        assertThat(noCase.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void aMetreOnWhichNothingPullsSaysSo() {
        // given a push that the weight outweighs
        Row row = Trial.in(Pushed.body(50_000, 50_000))
                .rules(Pushed.forward(0.1))
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 500)
                .rows(new PullPerMetre(Pushed.FASTENERS))
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.units()).isEmpty();
        assertThat(row.finding())
                .isEqualTo("Nothing pulls with 0 N on the most laden metre of floor grid, which bears 20000 N.");
    }

    static List<LoadCase> cases(String ruleSet) {
        return RuleSets.builtIn().stream()
                .filter(set -> set.id().equals(ruleSet))
                .map(RuleSet::loadCases)
                .findFirst()
                .orElseThrow();
    }

    private static Push of(List<Push> pushes, String id, String direction) {
        return pushes.stream()
                .filter(push ->
                        push.loadCase().id().equals(id) && push.direction().equals(direction))
                .findFirst()
                .orElseThrow();
    }
}
