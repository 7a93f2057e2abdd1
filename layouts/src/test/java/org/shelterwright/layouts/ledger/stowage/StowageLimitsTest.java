package org.shelterwright.layouts.ledger.stowage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
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
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** The limits of stowage, in a drawer of 500 x 400 x 200 mm of a locker that stands 1 m from the rear wall. */
class StowageLimitsTest {
    private boolean asked;
    private String lock = "drawer lock";
    private final Trial trial = Trial.in(TrialBody.of(6000, 2000, 2000)).rules("shelter-common");

    private TrialItem locker() {
        Stowage drawer = new Stowage(
                "drawer", Box.ofMm(50, 50, 100, 550, 450, 300), 10, StowageKind.DRAWER, null, lock, null, null);
        MassData empty = MassData.of(30, Point.ofMm(300, 250, 200), MassBasis.WEIGHED);
        return TrialItem.of("locker", 600, 500, 400).stowage(drawer).interior(new Interior(empty, List.of()));
    }

    private StowageLimitsTest in(PieceSpec spec, TrialPiece piece, int x, int y, int z, Posture posture) {
        trial.piece(spec, piece.build(), PiecePlace.stowed(spec.id(), "locker", "drawer", Point.ofMm(x, y, z), posture));
        return this;
    }

    private StowageLimitsTest in(String id, TrialPiece piece, int x, int y, int z) {
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
        trial.piece(PieceSpec.of("lamp", "Lamp", "lamp"), TrialPiece.loose("lamp", 100, 100, 100).build(), null);

        assertThat(row("placed").finding()).isEqualTo("1 piece to stow: Lamp.");
        assertThat(row("placed").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aPieceThatFillsItsPlaceLiesInsideIt() {
        in("a", TrialPiece.loose("a", 500, 400, 200), 50, 50, 100);

        assertThat(row("inside").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aPieceThatStandsOutIsMeasured() {
        in("a", TrialPiece.loose("a", 500, 400, 203), 50, 50, 100);

        assertThat(row("inside").finding()).isEqualTo("a stands out of the drawer of Locker by 3 mm.");
        assertThat(row("inside").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void touchingPiecesDoNotOverlap() {
        in("a", TrialPiece.loose("a", 100, 100, 100), 50, 50, 100)
                .in("b", TrialPiece.loose("b", 100, 100, 100), 150, 50, 100);

        assertThat(row("overlap").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void twoPiecesInOneSpaceAreNamed() {
        in("a", TrialPiece.loose("a", 100, 100, 100), 50, 50, 100)
                .in("b", TrialPiece.loose("b", 100, 100, 100), 140, 60, 110);

        assertThat(row("overlap").finding()).isEqualTo("a and b in the drawer of Locker overlap by 10 mm.");
    }

    /** Three quarters of the base rest: 75 of 100 mm. */
    @Test
    void aPieceMayStandOutByAQuarterOfItsBase() {
        in("a", TrialPiece.loose("a", 75, 100, 50), 50, 50, 100)
                .in("b", TrialPiece.loose("b", 100, 100, 50), 50, 50, 150);

        assertThat(row("rest").capacity()).isCloseTo(0.75, within(1e-12));
        assertThat(row("rest").verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    @Test
    void aPieceThatHangsInTheAirIsBroken() {
        in("a", TrialPiece.loose("a", 100, 100, 50), 50, 50, 120);

        assertThat(row("rest").finding())
                .isEqualTo("a in the drawer of Locker rests on 0 % of its base; at least 75 %.");
        assertThat(row("rest").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void nothingLiesOnWhatIsFragile() {
        in("glass", TrialPiece.loose("glass", 100, 100, 50).fragile(), 50, 50, 100)
                .in("b", TrialPiece.loose("b", 100, 100, 50), 50, 50, 150);

        assertThat(row("fragile").finding())
                .isEqualTo("Something lies on glass in the drawer of Locker, which is fragile.");
    }

    @Test
    void whatMustStandUprightMayBeTurnedButNotLaid() {
        in(PieceSpec.of("a", "a", "a"), TrialPiece.loose("a", 50, 60, 100).upright(), 50, 50, 100, Posture.TURNED);
        assertThat(row("upright").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void whatIsLaidOverAndMustNotIsNamed() {
        in(PieceSpec.of("a", "a", "a"), TrialPiece.loose("a", 50, 60, 100).upright(), 50, 50, 100, Posture.ON_SIDE);

        assertThat(row("upright").finding())
                .isEqualTo("a in the drawer of Locker is laid over, and must stand upright.");
    }

    @Test
    void theMassOfAPlaceIsTheSumOfItsPieces() {
        in("a", TrialPiece.loose("a", 100, 100, 50).kg(6.0), 50, 50, 100)
                .in("b", TrialPiece.loose("b", 100, 100, 50).kg(4.5), 200, 50, 100);

        assertThat(row("mass").demand()).isEqualTo(10.5);
        assertThat(row("mass").finding()).isEqualTo("The pieces in the drawer of Locker weigh 10.5 kg; it bears 10 kg.");
    }

    @Test
    void fingersNeedRoomAtTwoSidesOfOneAxis() {
        in("a", TrialPiece.loose("a", 100, 350, 50).grip(null), 50, 75, 100);

        assertThat(row("grip").capacity()).isEqualTo(25);
        assertThat(row("grip").verdict()).isNotEqualTo(Verdict.BROKEN);
    }

    @Test
    void aNeighbourThatTakesTheRoomIsSeen() {
        in("a", TrialPiece.loose("a", 490, 100, 50).grip(null), 55, 75, 100)
                .in("b", TrialPiece.loose("b", 100, 100, 50), 50, 195, 100);

        assertThat(row("grip").finding())
                .isEqualTo("a in the drawer of Locker leaves 20 mm for fingers at its sides; it needs 25 mm.");
    }

    @Test
    void dangerousGoodsThatMustBeApartAreNamed() {
        in("spirit", TrialPiece.loose("spirit", 100, 100, 50).goods("3", "5.1"), 50, 50, 100)
                .in("bleach", TrialPiece.loose("bleach", 100, 100, 50).goods("5.1"), 200, 50, 100);

        assertThat(row("goods-apart").finding())
                .isEqualTo("spirit (class 3) and bleach (class 5.1) must not lie beside each other in Locker.");
        assertThat(row("goods-apart").verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** The room of the rule set has 5 to 40 degrees. */
    @Test
    void aPieceThatMustStayColdDoesNotBearTheRoom() {
        in("kit", TrialPiece.loose("kit", 100, 100, 50).bears(2.0, 8.0), 50, 50, 100);

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
        in(used("kit", "work", null), TrialPiece.loose("kit", 100, 100, 50).urgency(Urgency.AT_ONCE), 50, 50, 100, Posture.AS_IS);

        Row row = row("at-hand");

        assertThat(row.demand()).isCloseTo(Math.hypot(4300 - 1100, 300 - 100), within(1e-6));
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("kit in the drawer of Locker lies 3206 mm from where Work needs it at once;"
                + " at most 2500 mm.");
    }

    @Test
    void aTaskWithoutAPlaceIsNotAssessed() {
        trial.task(new Task("work", "Work", null, null, null));
        in(used("kit", "work", null), TrialPiece.loose("kit", 100, 100, 50).urgency(Urgency.AT_ONCE), 50, 50, 100, Posture.AS_IS);

        assertThat(row("at-hand").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("at-hand").finding()).isEqualTo("Where the task Work is done is not stated or not placed.");
    }

    @Test
    void whatIsUsedFirstLiesNearest() {
        trial.task(new Task("work", "Work", "bench", null, null));
        trial.floor("bench", TrialItem.of("bench", 600, 600, 800), 4000, 0);
        in(used("first", "work", 1), TrialPiece.loose("first", 100, 100, 50), 50, 50, 100, Posture.AS_IS)
                .in(used("later", "work", 2), TrialPiece.loose("later", 100, 100, 50), 450, 50, 100, Posture.AS_IS);

        Row row = row("first-used");

        assertThat(row.demand()).isBetween(390.0, 400.0);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).startsWith("first in the drawer of Locker is used before later");
    }

    @Test
    void theSideOfATaskIsKept() {
        trial.task(new Task("work", "Work", null, null, Face.LEFT));
        in(used("kit", "work", null), TrialPiece.loose("kit", 100, 100, 50), 50, 50, 100, Posture.AS_IS);

        assertThat(row("side").finding()).isEqualTo("kit of Work rides on the other side than the left.");
        assertThat(row("side").verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aPlaceWithoutALockIsNotAssessed() {
        lock = null;
        in("a", TrialPiece.loose("a", 100, 100, 50), 50, 50, 100);

        assertThat(row("locked").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row("locked").finding())
                .isEqualTo("What keeps the drawer of Locker closed on the road is not stated.");
    }
}
