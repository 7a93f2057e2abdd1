package org.shelterwright.solver.inside;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.item.StowageKind;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;
import org.shelterwright.solver.fit.kernel.Dice;
import static org.assertj.core.api.Assertions.assertThat;

/** Many loose pieces into many places, repeatable, and sound by the ledger. */
class StowerTest {
    private static final Checker CHECKER = Checker.standard();

    /** Twelve lockers of five drawers each. */
    private static Layout lockers(int pieces, long seed) {
        Trial trial = Trial.in(TrialBody.of(12_000, 2_400, 2_200)).rules("shelter-common");
        for (int i = 0; i < 12; i++) {
            TrialItem locker = TrialItem.of("locker-" + i, 600, 800, 1500);
            for (int d = 0; d < 5; d++) {
                locker.stowage(new Stowage(
                        "drawer " + (d + 1),
                        Box.ofMm(20, 20, 20 + 290 * d, 580, 780, 290 * d + 280),
                        60,
                        StowageKind.DRAWER,
                        null,
                        "drawer lock",
                        null,
                        null));
            }
            locker.interior(new Interior(MassData.of(50, Point.ofMm(300, 400, 700), MassBasis.WEIGHED), List.of()));
            trial.floor("locker-" + i, locker, 900 * i, 0);
        }
        trial.floor("bench", TrialItem.of("bench", 600, 600, 800), 5000, 1500);
        trial.task(new Task("work", "Work", "bench", null, null));
        Dice dice = Dice.of(seed, 3);
        for (int i = 0; i < pieces; i++) {
            TrialPiece piece = TrialPiece.loose(
                            "kind-" + i, 60 + dice.below(160), 60 + dice.below(120), 40 + dice.below(90))
                    .kg(0.3 + dice.share())
                    .grip(dice.below(3) == 0 ? 25 : 0);
            if (dice.below(5) == 0) {
                piece.fragile();
            }
            if (dice.below(5) == 0) {
                piece.upright();
            }
            Integer order = i < 40 ? i % 8 + 1 : null;
            String task = i < 40 ? "work" : null;
            trial.piece(
                    new PieceSpec("p" + i, "Piece " + i, "kind-" + i, null, task, order, null, false, null, null),
                    piece.build(),
                    null);
        }
        return trial.layout();
    }

    @Test
    void fourHundredPiecesFindPlacesInTheSameWayEachTime() {
        Layout layout = lockers(400, 1);

        Stowing stowing = new Stower(CHECKER).stow(layout, 1);

        assertThat(stowing.toPlace()).isEmpty();
        assertThat(stowing.stowed()).isEqualTo(400);
        assertThat(stowing.ledger().rows())
                .filteredOn(row -> row.subject() == Subject.STOWAGE && row.verdict() == Verdict.BROKEN)
                .extracting(Row::finding)
                .isEmpty();
        assertThat(new Stower(CHECKER).arranged(layout, 1).contents()).isEqualTo(stowing.layout().contents());
    }

    @Test
    void whatIsKeptStays() {
        Layout layout = lockers(20, 2);
        PiecePlace kept = PiecePlace.stowed("p7", "locker-9", "drawer 4", Point.ofMm(100, 100, 890), Posture.AS_IS)
                .withKept(true);

        Stowing stowing = new Stower(CHECKER).stow(layout.withContents(layout.contents().with(kept)), 1);

        assertThat(stowing.layout().contents().places()).containsEntry("p7", kept);
        assertThat(stowing.toPlace()).isEmpty();
    }

    @Test
    void aPieceThatFitsNowhereIsLeftAndTold() {
        Layout layout = Trial.in(TrialBody.of(3000, 2000, 2000))
                .rules("shelter-common")
                .floor("crate", TrialItem.of("crate", 300, 300, 300), 0, 0)
                .piece(PieceSpec.of("pole", "Pole", "pole"), TrialPiece.loose("pole", 2000, 50, 50).build(), null)
                .layout();

        Stowing stowing = new Stower(CHECKER).stow(layout, 1);

        assertThat(stowing.toPlace()).extracting(PieceSpec::id).containsExactly("pole");
        assertThat(stowing.ledger().of("stowage.placed")).singleElement().satisfies(row -> assertThat(row.verdict())
                .isEqualTo(Verdict.BROKEN));
    }

    @Test
    void aBriefWithoutPiecesStaysAsItIs() {
        Layout layout = Trial.in(TrialBody.of(3000, 2000, 2000))
                .floor("crate", TrialItem.of("crate", 300, 300, 300), 0, 0)
                .layout();

        assertThat(new Stower(CHECKER).arranged(layout, 1)).isSameAs(layout);
    }
}
