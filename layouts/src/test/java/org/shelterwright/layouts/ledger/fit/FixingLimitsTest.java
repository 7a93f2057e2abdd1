package org.shelterwright.layouts.ledger.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Fixings on hard points, one in a hole, and the dead weight that hangs on them. */
class FixingLimitsTest {
    private static final Strength STRONG = new Strength(3000.0, 4000.0, 5000.0);

    private final TrialItem rack = TrialItem.of("rack", 800, 600, 1800)
            .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
            .fixing(Point.ofMm(750, 550, 0), Face.BOTTOM, "M10");

    private Trial inGrid() {
        return Trial.in(TrialBody.of(4000, 2000, 2000).floorGrid());
    }

    @Test
    void fixingsExactlyOnHolesLand() {
        Row row = inGrid().floor("one", rack, 100, 150).rows(new OnHardPoints()).get(0);
        Row turned = inGrid().put("one", rack, Trial.onFloor(100, 150, QuarterTurn.R90))
                .rows(new OnHardPoints())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(turned.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void fixingsBesideHolesNameTheNearestAndTheShift() {
        Row row = inGrid().floor("one", rack, 112, 145).rows(new OnHardPoints()).get(0);

        assertThat(row.demand()).isEqualTo(2.0);
        assertThat(row.unit()).isEqualTo("fixings");
        assertThat(row.finding())
                .isEqualTo("2 fixings of One (F1 and F2) land on no hard point of the floor:"
                        + " the nearest for F1 lies 12 mm to the rear and 5 mm to the left.");
        assertThat(row.mend()).isEqualTo("Move One 12 mm to the rear and 5 mm to the left: then every fixing lands.");
    }

    @Test
    void oneFixingBeyondTheGridIsFoundAlone() {
        // given a rail of which only the first hole of the unit finds one
        TrialBody body = TrialBody.of(4000, 2000, 2000)
                .grid("rail", Face.BOTTOM, Point.ofMm(50, 50, 0), Axis.X, 50, 10, 1, STRONG);

        Row row =
                Trial.in(body).floor("one", rack, 0, 0).rows(new OnHardPoints()).get(0);

        assertThat(row.demand()).isEqualTo(1.0);
        assertThat(row.finding()).startsWith("1 fixing of One (F2) lands on no hard point of the floor:");
        assertThat(row.mend()).isEqualTo("Find another place or turn for One, or add hard points.");
    }

    @Test
    void aThreadThatNothingTakesIsNamed() {
        TrialItem odd = TrialItem.of("odd", 200, 200, 200).fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M12");

        Row row = inGrid().floor("one", odd, 0, 0).rows(new OnHardPoints()).get(0);

        assertThat(row.finding())
                .isEqualTo("1 fixing of One (F1) lands on no hard point of the floor, and none for M12 is near F1.");
    }

    @Test
    void aDrillableZoneTakesAnyThreadAnywhereInIt() {
        TrialBody body = TrialBody.of(4000, 2000, 2000)
                .drillZone("plate", Face.BOTTOM, Box.ofMm(0, 0, 0, 1000, 1000, 0), STRONG);

        Row inside = Trial.in(body)
                .floor("one", rack, 13, 17)
                .rows(new OnHardPoints())
                .get(0);
        Row outside = Trial.in(body)
                .floor("one", rack, 260, 17)
                .rows(new OnHardPoints())
                .get(0);

        assertThat(inside.verdict()).isEqualTo(Verdict.MET);
        assertThat(outside.finding())
                .isEqualTo("1 fixing of One (F2) lands on no hard point of the floor:"
                        + " the nearest for F2 lies 10 mm to the rear.");
    }

    @Test
    void anItemWithoutFixingsIsNotAssessedUnlessLoose() {
        Row bolted = inGrid().floor("one", TrialItem.of("box", 100, 100, 100).bolted(), 0, 0)
                .rows(new OnHardPoints())
                .get(0);
        Row loose = inGrid().floor("one", TrialItem.of("box", 100, 100, 100), 0, 0)
                .rows(new OnHardPoints())
                .get(0);

        assertThat(bolted.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(bolted.finding())
                .isEqualTo("One is not loose, but its item states no fixing for the way in which it is mounted.");
        assertThat(bolted.mend()).isEqualTo("State the fixings of item box, or state that it is loose.");
        assertThat(loose.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void onlyTheFixingsOfTheWayOfMountingAreUsedAndBracesAlways() {
        TrialItem both = TrialItem.of("both", 200, 200, 400)
                .on(Surface.FLOOR, Surface.WALL)
                .fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(0, 100, 300), Face.REAR, "M10");
        TrialItem braced = TrialItem.of("braced", 200, 200, 400)
                .fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(0, 100, 300), Face.REAR, "M10");

        Row alternative =
                inGrid().floor("one", both, 0, 0).rows(new OnHardPoints()).get(0);
        Row brace = inGrid().floor("one", braced, 0, 0).rows(new OnHardPoints()).get(0);

        assertThat(alternative.verdict()).isEqualTo(Verdict.MET);
        assertThat(brace.finding()).startsWith("1 fixing of One (F2) lands on no hard point of the rear wall");
    }

    @Test
    void aLooseUnitIsHeldOnlyOnTheRoad() {
        TrialItem stowed = TrialItem.of("stowed", 200, 200, 200)
                .fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10")
                .loose();

        Row row = inGrid().put(
                        "one",
                        stowed,
                        Trial.onFloor(13, 0, QuarterTurn.R0),
                        Trial.onFloor(21, 0, QuarterTurn.R0),
                        Pin.NONE)
                .rows(new OnHardPoints())
                .get(0);

        assertThat(row.state()).isEqualTo("on the road");
        assertThat(row.finding()).contains("lies 21 mm to the rear");
    }

    @Test
    void fixingsOfAGuestGoIntoTheSupport() {
        TrialItem table =
                TrialItem.of("table", 800, 800, 700).support("top", Rect.ofMm(0, 0, 400, 800), 700, false, 50.0);
        TrialItem device = TrialItem.of("device", 300, 300, 200)
                .on(Surface.ON_UNIT)
                .fixing(Point.ofMm(20, 20, 0), Face.BOTTOM, "M6")
                .fixing(Point.ofMm(280, 280, 0), Face.BOTTOM, "M6");

        Row on = inGrid().floor("table", table, 0, 0)
                .put("device", device, Trial.on("table", 100, 0, 700))
                .rows(new OnHardPoints())
                .get(0);
        Row beside = inGrid().floor("table", table, 0, 0)
                .put("device", device, Trial.on("table", 200, 0, 700))
                .rows(new OnHardPoints())
                .get(0);

        assertThat(on.verdict()).isEqualTo(Verdict.MET);
        assertThat(beside.finding()).isEqualTo("1 fixing of Device (F2) lands beside the support that carries it.");
        assertThat(beside.mend()).isEqualTo("Find another place or turn for Device, or add hard points.");
    }

    @Test
    void twoUnitsDoNotShareAHole() {
        TrialItem foot = TrialItem.of("foot", 200, 200, 200)
                .fixing(Point.ofMm(0, 100, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(200, 100, 0), Face.BOTTOM, "M10");

        Row shared = inGrid().floor("one", foot, 100, 0)
                .floor("two", foot, 300, 0)
                .rows(new OneBoltPerHole())
                .get(0);
        Row apart = inGrid().floor("one", foot, 100, 0)
                .floor("two", foot, 350, 0)
                .rows(new OneBoltPerHole())
                .get(0);

        assertThat(shared.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(shared.demand()).isEqualTo(1.0);
        assertThat(shared.units()).containsExactly("one", "two");
        assertThat(shared.finding()).isEqualTo("One and Two both need 1 hole, at x 300 mm, y 100 mm, z 0 mm.");
        assertThat(shared.mend()).isEqualTo("Move Two by one hole.");
        assertThat(apart.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aFixingThatStandsOutOfItsUnitIsStillSeenByTheNeighbour() {
        TrialItem ear = TrialItem.of("ear", 200, 200, 200).fixing(Point.ofMm(250, 100, 0), Face.BOTTOM, "M10");
        TrialItem foot = TrialItem.of("foot", 200, 200, 200).fixing(Point.ofMm(50, 100, 0), Face.BOTTOM, "M10");

        Row row = inGrid().floor("one", ear, 100, 0)
                .floor("two", foot, 300, 0)
                .rows(new OneBoltPerHole())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
    }

    private Trial withRails() {
        return Trial.in(TrialBody.of(4000, 2000, 2000)
                .grid("wall rail", Face.REAR, Point.ofMm(0, 50, 1200), Axis.Y, 50, 38, 2, STRONG)
                .grid("roof rail", Face.TOP, Point.ofMm(50, 500, 2000), Axis.X, 50, 78, 2, STRONG));
    }

    /** 20 kg, its centre 150 mm off the wall, two fixings 300 mm above its lower edge. */
    private final TrialItem panel = TrialItem.of("panel", 300, 600, 400)
            .on(Surface.WALL)
            .mass(20.0, Point.ofMm(150, 300, 200))
            .fixing(Point.ofMm(0, 50, 300), Face.REAR, "M10")
            .fixing(Point.ofMm(0, 550, 300), Face.REAR, "M10");

    @Test
    void aPanelOnAWallSharesItsWeightAsShear() {
        Row row = withRails()
                .put("panel", panel, Trial.at(Surface.WALL, 0, 100, 900, QuarterTurn.R0))
                .rows(new FixingShear())
                .get(0);

        // 20 kg x 9.80665 m/s² / 2
        assertThat(row.demand()).isCloseTo(98.0665, within(1e-9));
        assertThat(row.capacity()).isEqualTo(4000.0);
        assertThat(row.title()).isEqualTo("Wall and roof load of Panel: shear");
        assertThat(row.finding()).isEqualTo("Fixing F1 of Panel governs, at rest.");
    }

    @Test
    void aPanelOnAWallPullsAtItsUpperFixings() {
        // moments about the lower edge: 20 x 9.80665 x 0.150 = 2 x T x 0.300
        Row row = withRails()
                .put("panel", panel, Trial.at(Surface.WALL, 0, 100, 900, QuarterTurn.R0))
                .rows(new FixingPullOut())
                .get(0);

        assertThat(row.demand()).isCloseTo(20 * 9.80665 * 0.150 / (2 * 0.300), within(1e-9));
        assertThat(row.capacity()).isEqualTo(3000.0);
    }

    @Test
    void fixingsInTwoRowsPullInProportionToTheirHeight() {
        // T = M h / sum(h²), h = 300 and 350 mm
        TrialItem two = TrialItem.of("two", 300, 600, 400)
                .on(Surface.WALL)
                .mass(20.0, Point.ofMm(150, 300, 200))
                .fixing(Point.ofMm(0, 50, 300), Face.REAR, "M10")
                .fixing(Point.ofMm(0, 50, 350), Face.REAR, "M10");

        Row row = withRails()
                .put("panel", two, Trial.at(Surface.WALL, 0, 100, 900, QuarterTurn.R0))
                .rows(new FixingPullOut())
                .get(0);

        double momentNm = 20 * 9.80665 * 0.150;
        assertThat(row.demand()).isCloseTo(momentNm * 0.35 / (0.3 * 0.3 + 0.35 * 0.35), within(1e-9));
        assertThat(row.finding()).isEqualTo("Fixing F2 of Panel governs, at rest.");
    }

    /** Under the roof, on two holes 500 mm apart, with a weight of 40 kg. */
    private final TrialItem cupboard = TrialItem.of("cupboard", 600, 300, 300)
            .on(Surface.ROOF)
            .mass(40.0, Point.ofMm(300, 150, 150))
            .fixing(Point.ofMm(50, 0, 300), Face.TOP, "M10")
            .fixing(Point.ofMm(550, 0, 300), Face.TOP, "M10");

    @Test
    void aUnitUnderTheRoofPullsOnly() {
        Trial trial = withRails().put("cupboard", cupboard, Trial.at(Surface.ROOF, 0, 500, 1700, QuarterTurn.R0));

        assertThat(trial.rows(new FixingShear()).get(0).demand()).isZero();
        assertThat(trial.rows(new FixingPullOut()).get(0).demand()).isCloseTo(196.133, within(1e-9));
    }

    @Test
    void theMostLadenMetreOfARailCountsAllThatHangsOnIt() {
        // given fixings at x 50, 550, 1050, 1550 mm, each 196.133 N: three lie within one metre, ends included
        Trial trial = withRails()
                .put("one", cupboard, Trial.at(Surface.ROOF, 0, 500, 1700, QuarterTurn.R0))
                .put("two", cupboard, Trial.at(Surface.ROOF, 1000, 500, 1700, QuarterTurn.R0));

        Row row = trial.rows(new PullOutPerMetre()).get(0);

        assertThat(row.demand()).isCloseTo(3 * 196.133, within(1e-9));
        assertThat(row.capacity()).isEqualTo(5000.0);
        assertThat(row.title()).isEqualTo("Load per metre of roof rail");
        assertThat(row.units()).containsExactly("one", "two");
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void whatIsTooHeavyForItsHardPointsIsBroken() {
        TrialItem heavy = TrialItem.of("heavy", 600, 300, 300)
                .on(Surface.ROOF)
                .mass(700.0, Point.ofMm(300, 150, 150))
                .fixing(Point.ofMm(50, 0, 300), Face.TOP, "M10")
                .fixing(Point.ofMm(550, 0, 300), Face.TOP, "M10");
        Trial trial = withRails().put("heavy", heavy, Trial.at(Surface.ROOF, 0, 500, 1700, QuarterTurn.R0));

        Row pull = trial.rows(new FixingPullOut()).get(0);
        Row metre = trial.rows(new PullOutPerMetre()).get(0);

        assertThat(pull.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(pull.mend())
                .isEqualTo("Share the weight over more or stronger hard points, or mount it on the floor.");
        assertThat(metre.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(metre.demand()).isCloseTo(700 * 9.80665, within(1e-9));
        assertThat(metre.mend()).isEqualTo("Spread what hangs there over a greater length or several rails.");
    }

    @Test
    void guestsHangOnTheFixingsOfTheirHost() {
        TrialItem shelf = TrialItem.of("shelf", 300, 600, 400)
                .on(Surface.WALL)
                .mass(5.0, Point.ofMm(100, 300, 200))
                .support("board", Rect.ofMm(0, 0, 300, 600), 400, false, 50.0)
                .fixing(Point.ofMm(0, 50, 300), Face.REAR, "M10")
                .fixing(Point.ofMm(0, 550, 300), Face.REAR, "M10");
        TrialItem book = TrialItem.of("book", 200, 200, 300).on(Surface.ON_UNIT).mass(15.0, Point.ofMm(100, 100, 150));
        Trial trial = withRails()
                .put("shelf", shelf, Trial.at(Surface.WALL, 0, 100, 900, QuarterTurn.R0))
                .put("book", book, Trial.on("shelf", 100, 100, 1300));

        assertThat(trial.rows(new FixingShear()).get(0).demand()).isCloseTo(98.0665, within(1e-9));
        // 5 kg at 100 mm and 15 kg at 200 mm off the wall, two fixings 300 mm up
        assertThat(trial.rows(new FixingPullOut()).get(0).demand())
                .isCloseTo(9.80665 * (5 * 0.1 + 15 * 0.2) / 0.6, within(1e-9));
    }

    @Test
    void theOppositeWallTakesTheSameLoads() {
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000)
                        .grid("front rail", Face.FRONT, Point.ofMm(4000, 50, 1200), Axis.Y, 50, 38, 1, STRONG))
                .put("panel", panel, Trial.at(Surface.WALL, 3700, 100, 900, QuarterTurn.R180));

        assertThat(trial.rows(new OnHardPoints()).get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(trial.rows(new FixingPullOut()).get(0).demand()).isCloseTo(49.03325, within(1e-9));
    }

    @Test
    void missingDataIsNotAssessed() {
        Strength none = new Strength(null, null, null);
        Trial weak = Trial.in(TrialBody.of(4000, 2000, 2000)
                        .grid("wall rail", Face.REAR, Point.ofMm(0, 50, 1200), Axis.Y, 50, 38, 1, none))
                .put("panel", panel, Trial.at(Surface.WALL, 0, 100, 900, QuarterTurn.R0));
        TrialItem unknown = TrialItem.of("unknown", 300, 600, 400)
                .on(Surface.WALL)
                .mass(20.0, null)
                .fixing(Point.ofMm(0, 50, 300), Face.REAR, "M10");
        Trial noCentre = withRails().put("panel", unknown, Trial.at(Surface.WALL, 0, 100, 900, QuarterTurn.R0));
        Trial beside = withRails().put("panel", panel, Trial.at(Surface.WALL, 0, 101, 900, QuarterTurn.R0));

        assertThat(finding(weak, new FixingShear())).isEqualTo("The shear strength of wall rail is not stated.");
        assertThat(finding(weak, new FixingPullOut())).isEqualTo("The pull-out strength of wall rail is not stated.");
        assertThat(finding(weak, new PullOutPerMetre()))
                .isEqualTo("The pull-out strength per metre of wall rail is not stated.");
        assertThat(finding(noCentre, new FixingPullOut())).isEqualTo("The centre of mass of Panel is not stated.");
        assertThat(finding(beside, new FixingShear())).isEqualTo("Fixing F1 of Panel lands on no hard point.");
        assertThat(List.of(weak, noCentre, beside))
                .allSatisfy(trial -> assertThat(
                                trial.rows(new FixingPullOut()).get(0).verdict())
                        .isEqualTo(Verdict.NOT_ASSESSED));
    }

    private static String finding(Trial trial, Limit limit) {
        return trial.rows(limit).get(0).finding();
    }

    @Test
    void theWorseSituationOfAHungUnitGoverns() {
        TrialItem load = TrialItem.of("load", 300, 300, 300).on(Surface.UNDER_UNIT, Surface.FLOOR);
        TrialItem carrying = TrialItem.of("carrying", 600, 300, 300)
                .on(Surface.ROOF)
                .mass(40.0, Point.ofMm(300, 150, 150))
                .support("hook", Rect.ofMm(0, 0, 600, 300), 0, true, 50.0)
                .fixing(Point.ofMm(50, 0, 300), Face.TOP, "M10")
                .fixing(Point.ofMm(550, 0, 300), Face.TOP, "M10");
        Trial trial = withRails()
                .put("cupboard", carrying, Trial.at(Surface.ROOF, 0, 500, 1700, QuarterTurn.R0))
                .put(
                        "load",
                        load,
                        Trial.onFloor(0, 0, QuarterTurn.R0),
                        Trial.under("cupboard", 0, 500, 1400),
                        Pin.NONE);

        Row row = trial.rows(new FixingPullOut()).get(0);

        assertThat(row.state()).isEqualTo("on the road");
        assertThat(row.demand()).isCloseTo(25 * 9.80665, within(1e-9));
    }
}
