package org.shelterwright.layouts.ledger.racks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.piece.AccessNeed;
import org.shelterwright.catalog.piece.RackSupport;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.PowerStrip;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;

/** The limits of racks, in a bay of 20 U with its lowest unit 100 mm above the floor. */
class RackLimitsTest {
    private static final Fasteners FASTENERS = Fasteners.builtIn();

    private final List<PowerStrip> strips = new ArrayList<>(List.of(new PowerStrip("strip A", "230 V ac", 4, 2)));
    private Integer railDepth = 500_000;
    private boolean asked;
    private Double ratingKg = 100.0;
    private Double railKg = 40.0;
    private @Nullable Double heatW;
    private Airflow airflow = Airflow.FRONT_TO_REAR;
    private Double airM3h = 300.0;
    private Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000)).rules("shelter-common");

    private TrialItem rack() {
        RackBay bay = new RackBay(
                "bay",
                20,
                Point.ofMm(550, 300, 100),
                Face.FRONT,
                50_000,
                540_000,
                railDepth,
                ratingKg,
                railKg,
                airflow,
                airM3h,
                strips);
        MassData empty = MassData.of(40, Point.ofMm(300, 300, 500), MassBasis.WEIGHED);
        return TrialItem.of("rack", 600, 600, 1100)
                .bolted()
                .interior(new Interior(empty, List.of(bay)))
                .power(new Power("230 V ac", 500, null, null, heatW, 1.0, null, null));
    }

    private RackLimitsTest in(String id, TrialPiece piece, int lowest) {
        trial.piece(PieceSpec.of(id, id, id), piece.build(), PiecePlace.inRack(id, "rack", "bay", lowest));
        return this;
    }

    private List<Row> rows(String limit) {
        if (!asked) {
            asked = true;
            trial.floor("rack", rack(), 1000, 500);
        }
        return trial.rows(RackLimits.all(FASTENERS).stream()
                .filter(one -> one.id().equals("racks." + limit))
                .findFirst()
                .orElseThrow());
    }

    private Row row(String limit) {
        List<Row> rows = rows(limit);
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void aLayoutWithoutPiecesHasNothingToHold() {
        assertThat(rows("mass")).singleElement().satisfies(row -> {
            assertThat(row.doesNotApply()).isTrue();
            assertThat(row.finding()).isEqualTo("No bay holds rack-mounted pieces.");
        });
    }

    @Test
    void aPieceWithoutAPlaceOrInAnotherUnitIsBroken() {
        in("radio", TrialPiece.racked("radio", 2, 300), 1);
        trial.piece(
                PieceSpec.of("logger", "Logger", "logger"),
                TrialPiece.racked("logger", 1, 300).build(),
                null);

        assertThat(row("placed").finding()).isEqualTo("1 piece to place: Logger.");
        assertThat(row("placed").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void piecesOneAboveTheOtherShareNoUnit() {
        in("low", TrialPiece.racked("low", 3, 300), 1).in("high", TrialPiece.racked("high", 2, 300), 4);

        assertThat(row("own-units").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void twoPiecesInOneUnitAreNamed() {
        in("low", TrialPiece.racked("low", 3, 300), 1).in("high", TrialPiece.racked("high", 2, 300), 3);

        Row row = row("own-units");

        assertThat(row.demand()).isEqualTo(1);
        assertThat(row.finding()).isEqualTo("low at U1 to U3 and high at U3 to U4 of Rack share height units.");
    }

    @Test
    void aTenthOfTheUnitsStaysFreeAndBlankingPanelsDoNotCount() {
        in("a", TrialPiece.racked("a", 9, 300), 1)
                .in("b", TrialPiece.racked("b", 9, 300), 10)
                .in("c", TrialPiece.racked("c", 2, 10).blank(), 19);

        Row row = row("units-free");

        assertThat(row.demand()).isEqualTo(18);
        assertThat(row.capacity()).isEqualTo(18);
        assertThat(row.verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    @Test
    void theMassOfTheBayIsTheSumOfItsPieces() {
        in("a", TrialPiece.racked("a", 2, 300).kg(60.0), 1)
                .in("b", TrialPiece.racked("b", 2, 300).kg(40.5), 3);

        Row row = row("mass");

        assertThat(row.demand()).isEqualTo(100.5);
        assertThat(row.finding()).isEqualTo("The pieces in Rack weigh 101 kg; it bears 100 kg.");
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aMassThatIsNotStatedIsNotAssessed() {
        in("a", TrialPiece.racked("a", 2, 300).kg(null), 1);

        assertThat(row("mass").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("mass").finding()).isEqualTo("The mass of a is not stated.");
        assertThat(row("centre").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("heavy-low").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("upright").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    /** Simple beam: the centre 140 mm behind the front uprights of 500 mm, so 0.28 of 20 kg goes to the rear, halves to each side. */
    @Test
    void frontAndRearUprightsShareByTheLever() {
        in("a", TrialPiece.racked("a", 2, 320).kg(20.0), 1);

        assertThat(row("upright").demand()).isCloseTo(20 * 0.72 / 2, within(1e-9));
        assertThat(row("upright").finding()).isEqualTo("The front right upright of Rack bears 7.2 kg of 40 kg.");
    }

    @Test
    void aPieceOnItsPanelAloneHangsOnTheFrontUprights() {
        in("a", TrialPiece.racked("a", 2, 320).kg(20.0).on(RackSupport.FRONT_UPRIGHTS), 1);

        assertThat(row("upright").demand()).isCloseTo(10, within(1e-9));
    }

    /** 20 U are 889 mm; two pieces of 2 U at the bottom and the top have their common centre at mid height. */
    @Test
    void theCommonCentreIsWeighed() {
        in("a", TrialPiece.racked("a", 2, 300).kg(10.0), 1)
                .in("b", TrialPiece.racked("b", 2, 300).kg(10.0), 19);

        Row row = row("centre");

        assertThat(row.capacity()).isCloseTo(444.5, within(1e-9));
        assertThat(row.demand()).isCloseTo((44.055 + 844.155) / 2, within(0.001));
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void aHeavyPieceAboveTheMiddleIsBroken() {
        in("a", TrialPiece.racked("a", 2, 300).kg(20.0), 11);

        assertThat(row("heavy-low").finding())
                .isEqualTo("a has its centre 489 mm above the lowest unit of Rack; the middle is at 445 mm.");
        assertThat(row("heavy-low").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aHeavyPieceMustNotHangOnItsPanelAlone() {
        in("a", TrialPiece.racked("a", 2, 300).kg(12.0).on(RackSupport.FRONT_UPRIGHTS), 1)
                .in("b", TrialPiece.racked("b", 2, 300).kg(11.9).on(RackSupport.FRONT_UPRIGHTS), 3);

        assertThat(row("rear-hold").demand()).isEqualTo(1);
        assertThat(row("rear-hold").finding()).startsWith("a in Rack hangs on the front uprights alone");
    }

    @Test
    void withoutRearUprightsNothingIsHeldAtTheRear() {
        railDepth = null;
        in("a", TrialPiece.racked("a", 2, 300).kg(1.0), 1);

        assertThat(row("rear-hold").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void plugsAndBentCablesCountInTheDepth() {
        in("a", TrialPiece.racked("a", 2, 500).cables(Face.REAR, 40, 20), 1);
        assertThat(row("depth").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row("depth").demand()).isEqualTo(540);
    }

    @Test
    void aPlugThatMeetsTheDoorIsBroken() {
        in("a", TrialPiece.racked("a", 2, 300).cables(Face.FRONT, 20, 11), 1);

        assertThat(row("depth").finding())
                .isEqualTo("a needs 51 mm before the mounting plane of Rack with its cables; there are 50 mm.");
        assertThat(row("depth").verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** 460 W at 230 V and power factor 1 are 2 A. */
    @Test
    void theStripBearsTheSumOfTheCurrents() {
        in("a", TrialPiece.racked("a", 2, 300).watts(460), 1)
                .in("b", TrialPiece.racked("b", 2, 300).watts(230), 3);

        List<Row> rows = rows("strip");

        assertThat(rows).hasSize(2);
        assertThat(rows).anySatisfy(row -> {
            assertThat(row.unit()).isEqualTo("A");
            assertThat(row.demand()).isCloseTo(3, within(1e-9));
        });
        assertThat(rows).anySatisfy(row -> {
            assertThat(row.unit()).isEqualTo("sockets");
            assertThat(row.verdict()).isEqualTo(Verdict.MET);
        });
    }

    @Test
    void aStripThatIsNotNamedAmongSeveralIsNotAssessed() {
        strips.add(new PowerStrip("strip B", "230 V ac", 4, 2));
        in("a", TrialPiece.racked("a", 2, 300).watts(460), 1);

        assertThat(rows("strip")).singleElement().satisfies(row -> {
            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.finding()).isEqualTo("Which strip of Rack feeds a is not stated.");
        });
    }

    @Test
    void thePiecesDrawNoMoreThanTheSuppliesCountWith() {
        in("a", TrialPiece.racked("a", 2, 300).watts(501), 1);

        assertThat(row("power-stated").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row("power-stated").finding()).isEqualTo("The pieces in Rack draw 501 W; the supplies count 500 W.");
    }

    /** 1 kW warms 300 m3/h by 10 K (common practice); exactly 1 005 W with 1.2 kg/m3 and 1.005 kJ/(kg K). */
    @Test
    void airCarriesHeatAway() {
        in("a", TrialPiece.racked("a", 2, 300).watts(1000), 1);

        assertThat(row("heat").capacity()).isCloseTo(1005, within(1e-9));
        assertThat(row("heat").verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void openUnitsLetAirFlowBack() {
        in("a", TrialPiece.racked("a", 18, 300), 1);

        assertThat(row("air-path").demand()).isEqualTo(2);
        assertThat(row("air-path").finding()).isEqualTo("2 U of Rack are open, and air flows back through them.");
    }

    @Test
    void blankingPanelsCloseThem() {
        in("a", TrialPiece.racked("a", 18, 300), 1)
                .in("c", TrialPiece.racked("c", 2, 10).blank(), 19);

        assertThat(row("air-path").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aPieceThatBlowsTheOtherWayIsBroken() {
        in("a", TrialPiece.racked("a", 20, 300).air(Airflow.REAR_TO_FRONT), 1);

        assertThat(row("air-path").finding()).isEqualTo("a in Rack blows against its air.");
    }

    @Test
    void aPieceSlidesOutToTheWallWithAGap() {
        in("a", TrialPiece.racked("a", 2, 300).slides(400, "screws"), 1);

        Row row = row("slide-out");

        assertThat(row.demand()).isEqualTo(600);
        assertThat(row.capacity()).isEqualTo(4000 - 1000 - 550 - 20);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aUnitBeforeTheRackLeavesNoRoom() {
        trial.floor("crate", TrialItem.of("crate", 300, 300, 900), 1900, 650);
        in("a", TrialPiece.racked("a", 2, 300).slides(400, "screws"), 1);

        assertThat(row("slide-out").capacity()).isEqualTo(1900 - 1570);
        assertThat(row("slide-out").finding())
                .isEqualTo("a needs 600 mm before its panel to slide out of Rack; 330 mm are free.");
    }

    @Test
    void aSlideOutStatesWhatKeepsItIn() {
        in("a", TrialPiece.racked("a", 2, 300).slides(400, null), 1);

        assertThat(row("secured").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("secured").finding()).isEqualTo("What keeps a in Rack on the road is not stated.");
    }

    @Test
    void tippingIsNotAssessedWithoutFixings() {
        in("a", TrialPiece.racked("a", 2, 300).slides(400, "screws").kg(20.0), 1);

        assertThat(row("tipping").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("tipping").finding())
                .isEqualTo("To tell whether Rack tips, there must be stated a fixing of Rack.");
    }

    /** The elbow and the eye of the 5th percentile woman: 975 and 1 501 mm (NUREG-0700 Rev. 3, table 11.4). */
    @Test
    void whatIsReadSitsBetweenElbowAndEye() {
        in("a", TrialPiece.racked("a", 2, 300).access(AccessNeed.EYE_LEVEL), 1);

        Row row = row("height");

        assertThat(row.demand()).isEqualTo(975);
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("a in Rack sits 144 mm above the floor; it should sit at least 975 mm.");
    }

    @Test
    void whatIsOperatedByHandMaySitLower() {
        in("a", TrialPiece.racked("a", 1, 300).access(AccessNeed.HAND), 20);

        assertThat(row("height").verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    /**
     * Lever rule across: hole rows 465.1 mm apart, the centre of mass 116.275 mm, a quarter of that, to one side: three quarters of the 20
     * kg go to the uprights of that side. The origin of a piece is at its rear right corner, so that a small y lies at the right.
     */
    @Test
    void theUprightsOfTheHeavierSideBearMore() {
        in("a", atSide(220 - 116), 1);
        double toRight = 0.5 + 116 / 465.1;

        assertThat(row("upright").demand()).isCloseTo(20 * toRight, within(1e-6));
        assertThat(row("upright").finding()).startsWith("The front right upright of Rack bears ");
    }

    @Test
    void aPieceHeavierAtTheLeftLoadsTheLeftUpright() {
        in("a", atSide(220 + 116), 1);

        assertThat(row("upright").demand()).isCloseTo(20 * (0.5 + 116 / 465.1), within(1e-6));
        assertThat(row("upright").finding()).startsWith("The front left upright of Rack bears ");
    }

    private static TrialPiece atSide(int y) {
        return TrialPiece.racked("a", 2, 320)
                .kg(20.0)
                .on(RackSupport.FRONT_UPRIGHTS)
                .centre(160, y, 40);
    }

    /** The centre 450 mm behind the front uprights of 500 mm: nine tenths of 40 kg at the rear, half of it on each side. */
    @Test
    void aDeepPieceHangsMostOnTheRear() {
        in("a", TrialPiece.racked("a", 2, 520).kg(40.0).centre(50, 220, 40), 1);

        assertThat(row("upright").demand()).isCloseTo(0.9 * 40 / 2, within(1e-6));
        assertThat(row("upright").finding()).isEqualTo("The rear right upright of Rack bears 18 kg of 40 kg.");
    }

    @Test
    void anUprightAtItsRatingIsCloseAndOneHundredGramsMoreIsBroken() {
        in("a", TrialPiece.racked("a", 2, 320).kg(80.0).on(RackSupport.FRONT_UPRIGHTS), 1);
        assertThat(row("upright").verdict()).isEqualTo(Verdict.CLOSE);

        RackLimitsTest more = new RackLimitsTest()
                .in("a", TrialPiece.racked("a", 2, 320).kg(80.1).on(RackSupport.FRONT_UPRIGHTS), 1);
        assertThat(more.row("upright").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aBayWithoutRatingsIsNotAssessed() {
        ratingKg = null;
        railKg = null;
        airM3h = null;
        airflow = null;
        in("a", TrialPiece.racked("a", 2, 300).watts(100), 1);

        assertThat(row("mass").finding()).isEqualTo("What the bay of Rack bears is not stated.");
        assertThat(row("upright").finding()).isEqualTo("What one upright of Rack bears is not stated.");
        assertThat(row("heat").finding()).isEqualTo("How much air goes through Rack is not stated.");
        assertThat(row("air-path").finding()).isEqualTo("Which way air goes through Rack is not stated.");
        assertThat(List.of(row("mass"), row("upright"), row("heat"), row("air-path")))
                .extracting(Row::verdict)
                .containsOnly(Verdict.NOT_ASSESSED);
    }

    @Test
    void figuresThatAreNotSetAreNamed() {
        trial = Trial.in(TrialBody.of(4000, 2000, 2000));
        in(
                "a",
                TrialPiece.racked("a", 2, 300)
                        .slides(400, "screws")
                        .access(AccessNeed.HAND)
                        .watts(10),
                1);

        for (String limit :
                List.of("units-free", "centre", "heavy-low", "rear-hold", "heat", "slide-out", "tipping", "height")) {
            assertThat(row(limit).verdict()).as(limit).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row(limit).finding()).as(limit).startsWith("No value is set for ");
        }
    }

    @Test
    void aPieceOfExactlyTheMassOfABayIsClose() {
        in("a", TrialPiece.racked("a", 2, 300).kg(100.0), 1);

        assertThat(row("mass").verdict()).isEqualTo(Verdict.CLOSE);
    }

    /** 12 kg (common practice, editable) is where a piece counts as heavy; just below it may sit anywhere. */
    @Test
    void aPieceJustBelowTheHeavyMassMaySitHigh() {
        trial.limit(Figure.RACK_HEAVY, 12);
        in("a", TrialPiece.racked("a", 2, 300).kg(11.9), 15);

        assertThat(row("heavy-low").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("heavy-low").finding()).isEqualTo("No piece in Rack weighs 12 kg or more.");
    }

    @Test
    void theHighestOfTheHeavyPiecesGoverns() {
        trial.limit(Figure.RACK_HEAVY, 12);
        in("a", TrialPiece.racked("a", 2, 300).kg(12.0), 5)
                .in("b", TrialPiece.racked("b", 2, 300).kg(12.0), 8)
                .in("c", TrialPiece.racked("c", 2, 300).kg(11.0), 15)
                .in("d", TrialPiece.racked("d", 2, 300).kg(30.0), 1);

        assertThat(row("heavy-low").finding()).startsWith("b has its centre ");
        assertThat(row("heavy-low").verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    @Test
    void everyHeavyPieceThatIsHeldAtTheRearIsFine() {
        in("a", TrialPiece.racked("a", 2, 300).kg(30.0), 1)
                .in("b", TrialPiece.racked("b", 2, 300).kg(1.0).on(RackSupport.FRONT_UPRIGHTS), 3);

        assertThat(row("rear-hold").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("rear-hold").finding()).isEqualTo("Every heavy piece in Rack is held at the rear too.");
    }

    @Test
    void aSupportThatIsNotStatedIsNotAssessed() {
        in("a", TrialPiece.racked("a", 2, 300).on(null), 1)
                .in("b", TrialPiece.racked("b", 2, 300).on(null), 3);

        assertThat(row("rear-hold").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("rear-hold").finding()).isEqualTo("The mass or support of a and b are not stated.");
    }

    @Test
    void theTightestPieceAndSideGovernTheDepth() {
        in("a", TrialPiece.racked("a", 2, 400), 1)
                .in("b", TrialPiece.racked("b", 2, 300).cables(Face.FRONT, 20, 9), 3)
                .in("c", TrialPiece.racked("c", 2, 500), 5);

        Row row = row("depth");

        assertThat(row.finding())
                .isEqualTo("b needs 49 mm before the mounting plane of Rack with its cables; there are 50 mm.");
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
    }

    /** 540 mm behind the plane, and one micrometre more. */
    @Test
    void aPieceAsDeepAsTheBayFitsAndOneDeeperDoesNot() {
        in("a", TrialPiece.racked("a", 2, 560), 1);
        assertThat(row("depth").demand()).isEqualTo(540.0);
        assertThat(row("depth").verdict()).isEqualTo(Verdict.CLOSE);

        RackLimitsTest deeper = new RackLimitsTest().in("a", TrialPiece.racked("a", 2, 561), 1);
        assertThat(deeper.row("depth").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(deeper.row("depth").finding())
                .isEqualTo("a needs 541 mm behind the mounting plane of Rack with its cables; there are 540 mm.");
    }

    @Test
    void aStripAtItsRatingIsCloseAndItsSocketsAreCounted() {
        in("a", TrialPiece.racked("a", 2, 300).watts(460), 1)
                .in("b", TrialPiece.racked("b", 2, 300).watts(230), 3)
                .in("c", TrialPiece.racked("c", 2, 300).watts(230), 5);

        List<Row> rows = rows("strip");

        assertThat(rows).anySatisfy(row -> {
            assertThat(row.finding()).isEqualTo("The strip A of Rack bears 4 A of 4 A.");
            assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        });
        assertThat(rows).anySatisfy(row -> {
            assertThat(row.finding()).isEqualTo("3 pieces plug into the 2 sockets of the strip A of Rack.");
            assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        });
    }

    @Test
    void aPieceThatNoStripFeedsIsNamedAndNoLoadsHold() {
        strips.clear();
        strips.add(new PowerStrip("strip A", "24 V dc", 4, 2));
        in("a", TrialPiece.racked("a", 2, 300).watts(460), 1);
        RackLimitsTest idle = new RackLimitsTest().in("a", TrialPiece.racked("a", 2, 300), 1);

        assertThat(row("strip").finding())
                .isEqualTo("Which strip of Rack feeds a (no strip with 230 V ac) is not stated.");
        assertThat(idle.row("strip").verdict()).isEqualTo(Verdict.MET);
        assertThat(idle.row("strip").finding()).isEqualTo("No piece in Rack draws power.");
        assertThat(idle.row("power-stated").finding()).isEqualTo("No piece in Rack draws power.");
    }

    @Test
    void piecesThatDrawExactlyWhatIsStatedAreClose() {
        in("a", TrialPiece.racked("a", 2, 300).watts(250), 1)
                .in("b", TrialPiece.racked("b", 2, 300).watts(250), 3);

        assertThat(row("power-stated").demand()).isEqualTo(500.0);
        assertThat(row("power-stated").verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void heatOfAllPiecesIsAdded() {
        in("a", TrialPiece.racked("a", 2, 300).watts(600), 1)
                .in("b", TrialPiece.racked("b", 2, 300).watts(406), 3);

        assertThat(row("heat").demand()).isEqualTo(1006.0);
        assertThat(row("heat").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row("heat").finding())
                .isEqualTo("The pieces in Rack give off 1006 W; its air carries away 1005 W with a rise of 10 K.");
    }

    @Test
    void airThatOnlyStillPiecesMeetNeedsNoWay() {
        airflow = null;
        in("a", TrialPiece.racked("a", 2, 300).air(Airflow.STILL), 1);
        RackLimitsTest unknown =
                new RackLimitsTest().in("a", TrialPiece.racked("a", 2, 300).air(null), 1);

        assertThat(row("air-path").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("air-path").finding()).isEqualTo("Air goes one way through Rack.");
        assertThat(unknown.row("air-path").finding()).isEqualTo("The airflow of a is not stated.");
    }

    @Test
    void piecesAgainstTheAirAndOpenUnitsAddUp() {
        in("a", TrialPiece.racked("a", 9, 300).air(Airflow.REAR_TO_FRONT), 1)
                .in("b", TrialPiece.racked("b", 9, 300).air(Airflow.REAR_TO_FRONT), 10);

        assertThat(row("air-path").demand()).isEqualTo(4.0);
        assertThat(row("air-path").finding())
                .isEqualTo(
                        "a and b in Rack blow against its air. 2 U of Rack are open, and air flows back through them.");
        assertThat(row("air-path").mend())
                .isEqualTo("Turn them round, or put them into a rack whose air goes their way.");
    }

    @Test
    void aWayOutOfExactlyWhatIsNeededIsClose() {
        // given a crate 600 mm before the panel at x 1570
        trial.floor("crate", TrialItem.of("crate", 300, 300, 900), 2170, 650);
        in("a", TrialPiece.racked("a", 2, 300).slides(400, "screws"), 1);
        assertThat(row("slide-out").verdict()).isEqualTo(Verdict.CLOSE);

        RackLimitsTest nearer = new RackLimitsTest();
        nearer.trial.floor("crate", TrialItem.of("crate", 300, 300, 900), 2169, 650);
        nearer.in("a", TrialPiece.racked("a", 2, 300).slides(400, "screws"), 1);
        assertThat(nearer.row("slide-out").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void whatDoesNotSlideNeedsNoRoomAndWhatIsSecuredIsFine() {
        in("a", TrialPiece.racked("a", 2, 300), 1);
        RackLimitsTest secured =
                new RackLimitsTest().in("a", TrialPiece.racked("a", 2, 300).slides(400, "two screws"), 1);

        assertThat(row("slide-out").finding()).isEqualTo("No piece in Rack slides out.");
        assertThat(row("tipping").doesNotApply()).isTrue();
        assertThat(secured.row("secured").verdict()).isEqualTo(Verdict.MET);
        assertThat(secured.row("secured").finding()).isEqualTo("Every slide-out in Rack is held on the road.");
    }

    @Test
    void whatIsReadMustNotSitTooHighEither() {
        // given 1200 mm as the highest, and a panel with its middle at 100 + 18.5 · 44.45 mm
        trial.limit(Figure.RACK_EYE_HIGH, 900).limit(Figure.RACK_EYE_LOW, 100);
        in("a", TrialPiece.racked("a", 1, 300).access(AccessNeed.EYE_LEVEL), 19)
                .in("b", TrialPiece.racked("b", 1, 300).access(AccessNeed.EYE_LEVEL), 10)
                .in("c", TrialPiece.racked("c", 1, 300).access(AccessNeed.RARE), 20);

        assertThat(row("height").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row("height").finding())
                .isEqualTo("a in Rack sits 922 mm above the floor; it should sit at most 900 mm.");
        assertThat(row("height").mend()).isEqualTo("Put it lower.");
    }

    @Test
    void aPieceInTheWrongUnitIsNamed() {
        trial.piece(
                new PieceSpec("radio", "Radio", "radio", "other", null, null, null, false, null, null),
                TrialPiece.racked("radio", 2, 300).build(),
                PiecePlace.inRack("radio", "rack", "bay", 1));

        assertThat(row("placed").finding()).isEqualTo("1 piece to place: Radio (in rack, not in other).");
        assertThat(row("placed").units()).containsExactly("rack");
        assertThat(new RackLimitsTest()
                        .in("a", TrialPiece.racked("a", 2, 300), 1)
                        .row("placed")
                        .finding())
                .isEqualTo("Every rack-mounted piece has its place.");
    }

    @Test
    void threePiecesInOneUnitAreTwoTooMany() {
        in("a", TrialPiece.racked("a", 1, 300), 4)
                .in("b", TrialPiece.racked("b", 1, 300), 4)
                .in("c", TrialPiece.racked("c", 1, 300), 4);

        assertThat(row("own-units").demand()).isEqualTo(2.0);
    }

    @Test
    void thePiecesGiveOffNoMoreHeatThanTheBalanceCountsWith() {
        heatW = 100.0;
        in("a", TrialPiece.racked("a", 2, 300).watts(101), 1);

        assertThat(row("power-stated").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row("power-stated").finding())
                .isEqualTo("The pieces in Rack give off 101 W; the heat balance counts 100 W.");
    }

    @Test
    void aPieceIsPluggedIntoTheStripThatItNames() {
        strips.add(new PowerStrip("strip B", "230 V ac", 4, 2));
        plugged("a", "strip B");
        RackLimitsTest wrong = new RackLimitsTest().plugged("a", "strip C");

        assertThat(rows("strip"))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.finding()).contains("strip B of Rack"));
        assertThat(wrong.row("strip").finding())
                .isEqualTo("Which strip of Rack feeds a (no strip \"strip C\" with 230 V ac) is not stated.");
    }

    private RackLimitsTest plugged(String id, String strip) {
        trial.piece(
                new PieceSpec(id, id, id, null, null, null, null, false, strip, null),
                TrialPiece.racked(id, 2, 300).watts(460).build(),
                PiecePlace.inRack(id, "rack", "bay", 1));
        return this;
    }
}
