package org.shelterwright.solver.inside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/** Many loose pieces into many places, repeatable, and sound by the ledger. */
class StowerTest {
    private static final Checker CHECKER = Checker.standard();

    @Test
    void sixtyPiecesFindPlacesInTheSameWayEachTime() {
        Layout layout = Lockers.of(8, 60);

        Stowing stowing = new Stower(CHECKER).stow(layout, 1);

        assertThat(stowing.toPlace()).isEmpty();
        assertThat(stowing.stowed()).isEqualTo(60);
        assertThat(stowing.ledger().rows())
                .filteredOn(row -> row.subject() == Subject.STOWAGE && row.verdict() == Verdict.BROKEN)
                .extracting(Row::finding)
                .isEmpty();
        assertThat(new Stower(CHECKER).arranged(layout, 1).contents())
                .isEqualTo(stowing.layout().contents());
    }

    @Test
    void whatIsKeptStays() {
        Layout once = new Stower(CHECKER).stow(Lockers.of(3, 10), 2).layout();
        PiecePlace kept = once.contents().places().get("p7").withKept(true);
        Layout asked = once.withContents(once.contents().withPlaces(Map.of()).with(kept));

        Stowing stowing = new Stower(CHECKER).stow(asked, 3);

        assertThat(stowing.layout().contents().places()).containsEntry("p7", kept);
        assertThat(stowing.toPlace()).isEmpty();
    }

    @Test
    void whatFitsNowhereIsLeftAndTold() {
        Stowing stowing = new Stower(CHECKER).stow(Lockers.of(1, 400), 1);

        assertThat(stowing.toPlace()).isNotEmpty();
        assertThat(stowing.ledger().of("stowage.placed"))
                .singleElement()
                .satisfies(row -> assertThat(row.verdict()).isEqualTo(Verdict.BROKEN));
    }

    @Test
    void aBriefWithoutPiecesStaysAsItIs() {
        Layout layout = Lockers.of(1, 0);

        assertThat(new Stower(CHECKER).arranged(layout, 1)).isSameAs(layout);
    }
}
