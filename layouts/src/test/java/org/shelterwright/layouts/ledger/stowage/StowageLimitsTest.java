package org.shelterwright.layouts.ledger.stowage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shelterwright.layouts.trial.TrialPiece.loose;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.item.StowageKind;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;

/** The limits of stowage, in a drawer of 500 x 400 x 200 mm of a locker that stands 1 m from the rear wall. */
class StowageLimitsTest {
    private boolean asked;
    private String lock = "drawer lock";
    private @Nullable Double leastC;
    private @Nullable Double mostC;
    private Trial trial = Trial.in(TrialBody.of(6000, 2000, 2000)).rules("shelter-common");

    private TrialItem locker() {
        Stowage drawer = new Stowage(
                "drawer", Box.ofMm(50, 50, 100, 550, 450, 300), 10, StowageKind.DRAWER, null, lock, leastC, mostC);
        MassData empty = MassData.of(30, Point.ofMm(300, 250, 200), MassBasis.WEIGHED);
        return TrialItem.of("locker", 600, 500, 400).stowage(drawer).interior(new Interior(empty, List.of()));
    }

    private StowageLimitsTest in(PieceSpec spec, TrialPiece piece, int x, int y, int z, Posture posture) {
        trial.piece(
                spec, piece.build(), PiecePlace.stowed(spec.id(), "locker", "drawer", Point.ofMm(x, y, z), posture));
        return this;
    }

    private StowageLimitsTest in(TrialPiece piece, int x, int y, int z) {
        String id = piece.build().id();
        return in(PieceSpec.of(id, id, id), piece, x, y, z, Posture.AS_IS);
    }

    private List<Row> rows(String limit) {
        if (!asked) {
            asked = true;
            trial.floor("locker", locker(), 1000, 0);
        }
        return trial.rows(StowageLimits.all().stream()
                .filter(one -> one.id().equals("stowage." + limit))
                .findFirst()
                .orElseThrow());
    }

    private Row row(String limit) {
        List<Row> rows = rows(limit);
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void aPieceWithoutAPlaceIsNamed() {
        trial.piece(
                PieceSpec.of("lamp", "Lamp", "lamp"),
                loose("lamp", 100, 100, 100).build(),
                null);

        assertThat(row("placed").finding()).isEqualTo("1 piece to stow: Lamp.");
        assertThat(row("placed").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aPieceThatFillsItsPlaceLiesInsideIt() {
        in(loose("a", 500, 400, 200), 50, 50, 100);

        assertThat(row("inside").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aPieceThatStandsOutIsMeasured() {
        in(loose("a", 500, 400, 203), 50, 50, 100);

        assertThat(row("inside").finding()).isEqualTo("a stands out of the drawer of Locker by 3 mm.");
        assertThat(row("inside").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void touchingPiecesDoNotOverlap() {
        in(loose("a", 100, 100, 100), 50, 50, 100).in(loose("b", 100, 100, 100), 150, 50, 100);

        assertThat(row("overlap").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void twoPiecesInOneSpaceAreNamed() {
        in(loose("a", 100, 100, 100), 50, 50, 100).in(loose("b", 100, 100, 100), 140, 60, 110);

        assertThat(row("overlap").finding()).isEqualTo("a and b in the drawer of Locker overlap by 10 mm.");
    }

    /** Three quarters of the base rest: 75 of 100 mm. */
    @Test
    void aPieceMayStandOutByAQuarterOfItsBase() {
        in(loose("a", 75, 100, 50), 50, 50, 100).in(loose("b", 100, 100, 50), 50, 50, 150);

        assertThat(row("rest").capacity()).isCloseTo(0.75, within(1e-12));
        assertThat(row("rest").verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    @Test
    void aPieceThatHangsInTheAirIsBroken() {
        in(loose("a", 100, 100, 50), 50, 50, 120);

        assertThat(row("rest").finding())
                .isEqualTo("a in the drawer of Locker rests on 0 % of its base; at least 75 %.");
        assertThat(row("rest").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void nothingLiesOnWhatIsFragile() {
        in(loose("glass", 100, 100, 50).fragile(), 50, 50, 100).in(loose("b", 100, 100, 50), 50, 50, 150);

        assertThat(row("fragile").finding())
                .isEqualTo("Something lies on glass in the drawer of Locker, which is fragile.");
    }

    @Test
    void whatMustStandUprightMayBeTurnedButNotLaid() {
        in(PieceSpec.of("a", "a", "a"), loose("a", 50, 60, 100).upright(), 50, 50, 100, Posture.TURNED);
        assertThat(row("upright").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void whatIsLaidOverAndMustNotIsNamed() {
        in(PieceSpec.of("a", "a", "a"), loose("a", 50, 60, 100).upright(), 50, 50, 100, Posture.ON_SIDE);

        assertThat(row("upright").finding())
                .isEqualTo("a in the drawer of Locker is laid over, and must stand upright.");
    }

    @Test
    void theMassOfAPlaceIsTheSumOfItsPieces() {
        in(loose("a", 100, 100, 50).kg(6.0), 50, 50, 100)
                .in(loose("b", 100, 100, 50).kg(4.5), 200, 50, 100);

        assertThat(row("mass").demand()).isEqualTo(10.5);
        assertThat(row("mass").finding())
                .isEqualTo("The pieces in the drawer of Locker weigh 10.5 kg; it bears 10 kg.");
    }

    @Test
    void fingersNeedRoomAtTwoSidesOfOneAxis() {
        in(loose("a", 100, 350, 50).grip(null), 50, 75, 100);

        assertThat(row("grip").capacity()).isEqualTo(25);
        assertThat(row("grip").verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    @Test
    void aNeighbourThatTakesTheRoomIsSeen() {
        in(loose("a", 490, 100, 50).grip(null), 55, 75, 100).in(loose("b", 100, 100, 50), 50, 195, 100);

        assertThat(row("grip").finding())
                .isEqualTo("a in the drawer of Locker leaves 20 mm for fingers at its sides; it needs 25 mm.");
    }

    @Test
    void dangerousGoodsThatMustBeApartAreNamed() {
        in(loose("spirit", 100, 100, 50).goods("3", "5.1"), 50, 50, 100)
                .in(loose("bleach", 100, 100, 50).goods("5.1"), 200, 50, 100);

        assertThat(row("goods-apart").finding())
                .isEqualTo("spirit (class 3) and bleach (class 5.1) must not lie beside each other in Locker.");
        assertThat(row("goods-apart").verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** The room of the rule set has 5 to 40 degrees. */
    @Test
    void aPieceThatMustStayColdDoesNotBearTheRoom() {
        in(loose("kit", 100, 100, 50).bears(2.0, 8.0), 50, 50, 100);

        assertThat(row("temperature").demand()).isEqualTo(32);
        assertThat(row("temperature").finding())
                .isEqualTo("The drawer of Locker has 5 to 40 °C, which kit does not bear by 32 K.");
    }

    private PieceSpec used(String id, String task, Integer order) {
        return new PieceSpec(id, id, id, null, task, order, null, true, null, null);
    }

    @Test
    void whatIsNeededAtOnceLiesWithinReachOfItsTask() {
        trial.task(new Task("work", "Work", "bench", null, null));
        trial.floor("bench", TrialItem.of("bench", 600, 600, 800), 4000, 0);
        in(used("kit", "work", null), loose("kit", 100, 100, 50).urgency(Urgency.AT_ONCE), 50, 50, 100, Posture.AS_IS);

        Row row = row("at-hand");

        assertThat(row.demand()).isCloseTo(Math.hypot(4300 - 1100, 300 - 100), within(1e-6));
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("kit in the drawer of Locker lies 3206 mm from where Work needs it at once;"
                        + " at most 2500 mm.");
    }

    @Test
    void aTaskWithoutAPlaceIsNotAssessed() {
        trial.task(new Task("work", "Work", null, null, null));
        in(used("kit", "work", null), loose("kit", 100, 100, 50).urgency(Urgency.AT_ONCE), 50, 50, 100, Posture.AS_IS);

        assertThat(row("at-hand").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("at-hand").finding()).isEqualTo("Where the task Work is done is not stated or not placed.");
    }

    @Test
    void whatIsUsedFirstLiesNearest() {
        trial.task(new Task("work", "Work", "bench", null, null));
        trial.floor("bench", TrialItem.of("bench", 600, 600, 800), 4000, 0);
        in(used("first", "work", 1), loose("first", 100, 100, 50), 50, 50, 100, Posture.AS_IS)
                .in(used("later", "work", 2), loose("later", 100, 100, 50), 450, 50, 100, Posture.AS_IS);

        Row row = row("first-used");

        assertThat(row.demand()).isBetween(390.0, 400.0);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).startsWith("first in the drawer of Locker is used before later");
    }

    @Test
    void theSideOfATaskIsKept() {
        trial.task(new Task("work", "Work", null, null, Face.LEFT));
        in(used("kit", "work", null), loose("kit", 100, 100, 50), 50, 50, 100, Posture.AS_IS);

        assertThat(row("side").finding()).isEqualTo("kit of Work rides on the other side than the left.");
        assertThat(row("side").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aPlaceWithoutALockIsNotAssessed() {
        lock = null;
        in(loose("a", 100, 100, 50), 50, 50, 100);

        assertThat(row("locked").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("locked").finding())
                .isEqualTo("What keeps the drawer of Locker closed on the road is not stated.");
    }

    @Test
    void everyPieceHasItsPlaceInTheUnitThatIsAskedFor() {
        in(loose("a", 100, 100, 50), 50, 50, 100);
        assertThat(row("placed").finding()).isEqualTo("Every loose piece has its place.");
        assertThat(row("placed").verdict()).isEqualTo(Verdict.MET);

        StowageLimitsTest elsewhere = new StowageLimitsTest()
                .in(
                        new PieceSpec("a", "A", "a", "crate", null, null, null, false, null, null),
                        loose("a", 100, 100, 50),
                        50,
                        50,
                        100,
                        Posture.AS_IS);
        assertThat(elsewhere.row("placed").finding()).isEqualTo("1 piece to stow: A (in locker, not in crate).");
        assertThat(elsewhere.row("placed").units()).containsExactly("locker");
    }

    @Test
    void ofManyPiecesToStowEightAreNamed() {
        for (int i = 1; i <= 9; i++) {
            trial.piece(
                    PieceSpec.of("p" + i, "P" + i, "p" + i),
                    loose("p" + i, 10, 10, 10).build(),
                    null);
        }

        assertThat(row("placed").finding()).isEqualTo("9 pieces to stow: P1, P2, P3, P4, P5, P6, P7, P8 and 1 more.");
    }

    @Test
    void aLayoutWithoutPiecesHasNothingToHold() {
        for (Limit limit : StowageLimits.all()) {
            assertThat(trial.rows(limit)).as(limit.id()).allMatch(Row::doesNotApply);
        }
    }

    /** One micrometre beyond each of the six sides. */
    @ParameterizedTest
    @CsvSource({
        "49.999, 50, 100",
        "50, 49.999, 100",
        "50, 50, 99.999",
        "450.001, 50, 100",
        "50, 350.001, 100",
        "50, 50, 200.001"
    })
    void aMicrometreBeyondItsPlaceIsBroken(double x, double y, double z) {
        trial.piece(
                PieceSpec.of("a", "a", "a"),
                loose("a", 100, 100, 100).build(),
                PiecePlace.stowed("a", "locker", "drawer", micrometres(x, y, z), Posture.AS_IS));

        assertThat(row("inside").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row("inside").demand()).isEqualTo(0.001);
    }

    private static Point micrometres(double x, double y, double z) {
        return new Point((int) Math.round(1000 * x), (int) Math.round(1000 * y), (int) Math.round(1000 * z));
    }

    @Test
    void theDeepestOverlapIsNamedWithWhatMendsIt() {
        in(loose("a", 100, 100, 100), 50, 50, 100)
                .in(loose("b", 100, 100, 100), 145, 50, 100)
                .in(loose("c", 100, 100, 100), 225, 50, 100);

        assertThat(row("overlap").finding()).isEqualTo("b and c in the drawer of Locker overlap by 20 mm.");
        assertThat(row("overlap").mend()).isEqualTo("Move c by at least 20 mm.");
    }

    @Test
    void piecesOnTheBottomRestOnTheirWholeBase() {
        in(loose("a", 75, 100, 50), 50, 50, 100);

        assertThat(row("rest").finding()).isEqualTo("Every piece in the drawer of Locker rests on its whole base.");
    }

    /** Two of three parts of the base lie on two pieces, 40 and 35 mm of 100: 75 % (by hand); 1 mm less is too little. */
    @Test
    void theRestsOnSeveralPiecesAddUp() {
        in(loose("a", 40, 100, 50), 50, 50, 100)
                .in(loose("b", 35, 100, 50), 115, 50, 100)
                .in(loose("c", 100, 100, 50), 50, 50, 150);
        StowageLimitsTest less = new StowageLimitsTest()
                .in(loose("a", 40, 100, 50), 50, 50, 100)
                .in(loose("b", 34, 100, 50), 116, 50, 100)
                .in(loose("c", 100, 100, 50), 50, 50, 150);

        assertThat(row("rest").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(less.row("rest").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(less.row("rest").finding())
                .isEqualTo("c in the drawer of Locker rests on 74 % of its base; at least 75 %.");
    }

    /** A base of 100 x 100 mm of which 90 x 90 mm lie on another: 81 %; beside it, at the same height, it rests on nothing. */
    @Test
    void onlyWhatIsRightBelowHoldsAPiece() {
        in(loose("a", 90, 90, 50), 50, 50, 100).in(loose("b", 100, 100, 50), 50, 50, 150);
        StowageLimitsTest beside = new StowageLimitsTest()
                .in(loose("a", 100, 100, 50), 50, 50, 100)
                .in(loose("b", 100, 100, 50), 150, 50, 150)
                .in(loose("c", 100, 100, 50), 350, 350, 100);

        assertThat(row("rest").capacity()).isCloseTo(0.81, within(1e-12));
        assertThat(beside.row("rest").capacity()).isZero();
    }

    @Test
    void whatLiesOnTwoFragilePiecesNamesBoth() {
        in(loose("glass", 50, 100, 50).fragile(), 50, 50, 100)
                .in(loose("lens", 50, 100, 50).fragile(), 100, 50, 100)
                .in(loose("b", 100, 100, 50), 50, 50, 150);
        StowageLimitsTest below = new StowageLimitsTest()
                .in(loose("a", 100, 100, 50), 50, 50, 100)
                .in(loose("glass", 100, 100, 50).fragile(), 50, 50, 150);

        assertThat(row("fragile").demand()).isEqualTo(2.0);
        assertThat(row("fragile").finding())
                .isEqualTo("Something lies on glass and lens in the drawer of Locker, which are fragile.");
        assertThat(below.row("fragile").verdict()).isEqualTo(Verdict.MET);
        assertThat(below.row("fragile").finding())
                .isEqualTo("Nothing lies on a fragile piece in the drawer of Locker.");
    }

    @Test
    void aPlaceOfExactlyItsRatingIsCloseAndAMassThatIsNotStatedIsNamed() {
        in(loose("a", 100, 100, 50).kg(10.0), 50, 50, 100);
        StowageLimitsTest unknown = new StowageLimitsTest()
                .in(loose("a", 100, 100, 50).kg(null), 50, 50, 100)
                .in(loose("b", 100, 100, 50).kg(null), 200, 50, 100);

        assertThat(row("mass").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(unknown.row("mass").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unknown.row("mass").finding())
                .isEqualTo("The mass of a and b in the drawer of Locker are not stated.");
    }

    /** 25 mm for fingers (common practice): exactly as much is enough, one micrometre less is not. */
    @Test
    void fingersThatJustFitAreCloseAndAMicrometreLessIsBroken() {
        in(loose("a", 500, 350, 50).grip(null), 50, 75, 100);
        StowageLimitsTest less = new StowageLimitsTest();
        less.trial.piece(
                PieceSpec.of("a", "a", "a"),
                loose("a", 500, 350, 50).grip(null).build(),
                PiecePlace.stowed("a", "locker", "drawer", micrometres(50, 74.999, 100), Posture.AS_IS));

        assertThat(row("grip").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(less.row("grip").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(less.row("grip").capacity()).isEqualTo(24.999);
    }

    @Test
    void aNeighbourThatIsNotBesideAPieceTakesNoRoom() {
        // given one above, and one beside that is farther along
        in(loose("a", 100, 300, 50).grip(null), 50, 100, 100)
                .in(loose("above", 100, 300, 50), 50, 100, 150)
                .in(loose("along", 100, 50, 50), 200, 50, 100);

        assertThat(row("grip").capacity()).isEqualTo(50.0);
    }

    @Test
    void neighboursOnBothSidesCount() {
        in(loose("a", 490, 100, 50).grip(null), 55, 200, 100)
                .in(loose("right", 100, 100, 50), 50, 60, 100)
                .in(loose("left", 100, 100, 50), 50, 335, 100);

        assertThat(row("grip").capacity()).as("40 and 35 mm").isEqualTo(35.0);
        assertThat(row("grip").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aPieceWithAHandleNeedsNoRoom() {
        in(loose("a", 500, 400, 50), 50, 50, 100);

        assertThat(row("grip").finding()).isEqualTo("Every piece in the drawer of Locker has a handle of its own.");
    }

    @Test
    void goodsThatMayLieTogetherAreFine() {
        in(loose("spirit", 100, 100, 50).goods("3", "5.1"), 50, 50, 100)
                .in(loose("fuel", 100, 100, 50).goods("3"), 200, 50, 100);
        StowageLimitsTest plain = new StowageLimitsTest().in(loose("a", 100, 100, 50), 50, 50, 100);

        assertThat(row("goods-apart").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("goods-apart").finding()).isEqualTo("The dangerous goods in Locker may lie beside each other.");
        assertThat(plain.row("goods-apart").doesNotApply()).isTrue();
    }

    @Test
    void everyPairOfGoodsCounts() {
        in(loose("spirit", 100, 100, 50).goods("3", "5.1"), 50, 50, 100)
                .in(loose("bleach", 100, 100, 50).goods("5.1"), 200, 50, 100)
                .in(loose("fuel", 100, 100, 50).goods("3", "5.1"), 350, 50, 100);

        assertThat(row("goods-apart").demand()).isEqualTo(2.0);
    }

    @Test
    void aPieceThatBearsJustTheRoomIsFine() {
        in(loose("kit", 100, 100, 50).bears(5.0, 40.0), 50, 50, 100);
        StowageLimitsTest cold = new StowageLimitsTest()
                .in(loose("kit", 100, 100, 50).bears(6.0, null), 50, 50, 100)
                .in(loose("gel", 100, 100, 50).bears(7.5, null), 200, 50, 100);
        StowageLimitsTest plain = new StowageLimitsTest().in(loose("a", 100, 100, 50), 50, 50, 100);

        assertThat(row("temperature").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("temperature").finding()).isEqualTo("Every piece in the drawer of Locker bears its 5 to 40 °C.");
        assertThat(cold.row("temperature").finding())
                .isEqualTo("The drawer of Locker has 5 to 40 °C, which gel does not bear by 2.5 K.");
        assertThat(plain.row("temperature").finding())
                .isEqualTo("No piece in the drawer of Locker states temperatures that it bears.");
    }

    @Test
    void aPlaceThatIsKeptColdIsJudgedByItsOwnTemperatures() {
        leastC = 2.0;
        mostC = 8.0;
        in(loose("kit", 100, 100, 50).bears(2.0, 8.0), 50, 50, 100);

        assertThat(row("temperature").finding()).isEqualTo("Every piece in the drawer of Locker bears its 2 to 8 °C.");
    }

    @Test
    void figuresThatAreNotSetAreNamed() {
        trial = Trial.in(TrialBody.of(6000, 2000, 2000));
        trial.task(new Task("work", "Work", "bench", null, null));
        trial.floor("bench", TrialItem.of("bench", 600, 600, 800), 4000, 0);
        in(
                        used("kit", "work", 1),
                        loose("kit", 100, 100, 50)
                                .urgency(Urgency.AT_ONCE)
                                .grip(null)
                                .bears(2.0, 8.0),
                        50,
                        50,
                        100,
                        Posture.AS_IS)
                .in(used("next", "work", 2), loose("next", 100, 100, 50), 200, 50, 100, Posture.AS_IS);

        for (String limit : List.of("rest", "grip", "temperature", "at-hand", "first-used")) {
            assertThat(row(limit).verdict()).as(limit).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row(limit).finding()).as(limit).startsWith("No value is set for ");
        }
    }

    @Test
    void aPlaceThatStatesOneTemperatureNeedsTheOtherFromTheRules() {
        trial = Trial.in(TrialBody.of(6000, 2000, 2000));
        leastC = 2.0;
        in(loose("kit", 100, 100, 50).bears(2.0, 8.0), 50, 50, 100);

        assertThat(row("temperature").finding()).contains("(" + Figure.STOWAGE_ROOM_HIGH.id() + ")");
    }

    /** Middle of the piece at (1100, 100), of the service zone of the bench at (4000 + 900, 300): 3 805 mm (by hand). */
    @Test
    void aTaskIsDoneInTheServiceZoneOfItsUnit() {
        trial.task(new Task("work", "Work", "bench", null, null));
        trial.floor(
                "bench",
                TrialItem.of("bench", 600, 600, 800).zone(Purpose.SERVICE, Box.ofMm(600, 0, 0, 1200, 600, 1900)),
                4000,
                0);
        in(used("kit", "work", null), loose("kit", 100, 100, 50).urgency(Urgency.SOON), 50, 50, 100, Posture.AS_IS);

        assertThat(row("at-hand").demand()).isCloseTo(Math.hypot(3800, 200), within(1e-6));
        assertThat(row("at-hand").finding()).contains(" needs it soon; at most ");
    }

    @Test
    void whatIsUsedLaterMayLieFarther() {
        trial.task(new Task("work", "Work", "bench", null, null));
        trial.floor("bench", TrialItem.of("bench", 600, 600, 800), 4000, 0);
        in(used("first", "work", 1), loose("first", 100, 100, 50), 450, 50, 100, Posture.AS_IS)
                .in(used("later", "work", 2), loose("later", 100, 100, 50), 50, 50, 100, Posture.AS_IS);

        assertThat(row("first-used").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("first-used").finding()).isEqualTo("Nothing of Work lies farther than what is used after it.");
    }

    @Test
    void onePieceOrATaskWithoutAPlaceHasNoOrder() {
        trial.task(new Task("work", "Work", null, null, null));
        in(used("first", "work", 1), loose("first", 100, 100, 50), 450, 50, 100, Posture.AS_IS)
                .in(used("later", "work", 2), loose("later", 100, 100, 50), 50, 50, 100, Posture.AS_IS);

        assertThat(row("first-used").doesNotApply()).isTrue();
    }

    @Test
    void aPieceOnTheRightSideOrInTheMiddleIsFine() {
        trial.task(new Task("work", "Work", null, null, Face.RIGHT));
        in(used("kit", "work", null), loose("kit", 100, 100, 50), 50, 50, 100, Posture.AS_IS);
        StowageLimitsTest middle = new StowageLimitsTest();
        middle.asked = true;
        middle.trial.task(new Task("work", "Work", null, null, Face.LEFT));
        middle.trial.floor("locker", middle.locker(), 1000, 900);
        middle.in(used("kit", "work", null), loose("kit", 100, 100, 50), 50, 50, 100, Posture.AS_IS);

        assertThat(row("side").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("side").finding()).isEqualTo("The pieces of Work ride on the right.");
        assertThat(middle.row("side").verdict())
                .as("its centre at y 1000 of 2000")
                .isEqualTo(Verdict.MET);
    }

    @Test
    void aPlaceWithALockSaysWhichOne() {
        in(loose("a", 100, 100, 50), 50, 50, 100);

        assertThat(row("locked").verdict()).isEqualTo(Verdict.MET);
        assertThat(row("locked").finding()).isEqualTo("The drawer of Locker is kept closed by: drawer lock.");
    }
}
