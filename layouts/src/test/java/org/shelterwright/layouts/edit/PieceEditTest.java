package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.file.FilledPost;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.trial.TrialPiece;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** Edits of what is inside the units. */
class PieceEditTest {
    private final Layout layout = FilledPost.layout();

    private static PiecePlace place(Layout of, String piece) {
        return of.contents().places().get(piece);
    }

    @Test
    void aPieceIsPutElsewhere() {
        PutPiece edit = new PutPiece(PiecePlace.inRack("radio", FilledPost.UNIT, "bay", 9));

        assertThat(edit.name()).isEqualTo("Put radio into " + FilledPost.UNIT);
        assertThat(place(edit.apply(layout), "radio").lowest()).isEqualTo(9);
    }

    @Test
    void aPlaceThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> new PutPiece(PiecePlace.inRack("radio", FilledPost.UNIT, "bay", 20)).apply(layout))
                .hasMessage("The unit \"" + FilledPost.UNIT
                        + "\" has no height units from U20 on in a bay \"bay\" for the piece \"radio\". Choose another"
                        + " place.");
    }

    @Test
    void aPieceThatIsNotListedIsToldWithTheNearest() {
        assertThatThrownBy(() -> new TakeOutPiece("rodio").apply(layout))
                .hasMessage("The brief has no piece \"rodio\". Did you mean \"radio\"?");
    }

    @Test
    void aPieceIsTakenOutAndThenHasNoPlace() {
        Layout out = new TakeOutPiece("radio").apply(layout);

        assertThat(place(out, "radio")).isNull();
        assertThatThrownBy(() -> new LockPiece("radio", true).apply(out))
                .hasMessage("The piece \"radio\" has no place yet. Put it into a unit first.");
    }

    @Test
    void aPieceIsKeptAndLetGo() {
        Layout kept = new LockPiece("radio", true).apply(layout);

        assertThat(place(kept, "radio").kept()).isTrue();
        assertThat(new LockPiece("radio", false).apply(kept)).isEqualTo(layout);
    }

    @Test
    void piecesOfDifferentPlacesDoNotSwap() {
        assertThatThrownBy(() -> new SwapPieces("radio", "lamp").apply(layout))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has no stowage place \"drawer\" for the piece \"radio\"");
    }

    @Test
    void twoPiecesOfARackSwap() {
        Inventory listed = layout.brief().listed();
        Piece second = TrialPiece.racked("second", 2, 200).build();
        List<PieceSpec> more = new ArrayList<>(listed.pieces());
        more.add(PieceSpec.of("second", "Second", "second"));
        Layout both = new PutPiece(PiecePlace.inRack("second", FilledPost.UNIT, "bay", 7))
                .apply(new SetInventory(listed.withPieces(more), List.of(second)).apply(layout));

        Layout swapped = new SwapPieces("radio", "second").apply(both);

        assertThat(place(swapped, "radio").lowest()).isEqualTo(7);
        assertThat(place(swapped, "second").lowest()).isEqualTo(3);
    }

    @Test
    void removingAUnitTakesItsPiecesOut() {
        Layout without = new RemoveUnit(FilledPost.UNIT).apply(layout.withAsked(
                layout.brief().withInventory(new Inventory(
                        List.of(), List.of(PieceSpec.of("radio", "Radio", "radio")))),
                layout.parts()));

        assertThat(without.contents().places()).isEmpty();
        assertThat(without.brief().listed().pieces()).hasSize(1);
    }

    @Test
    void settingTheInventoryDropsWhatIsListedNoMore() {
        Layout none = new SetInventory(null, List.of()).apply(layout);

        assertThat(none.contents()).isEqualTo(Contents.NONE);
        assertThatThrownBy(() -> new SetInventory(
                                new Inventory(List.of(), List.of(PieceSpec.of("a", "A", "unknown"))), List.of())
                        .apply(layout))
                .hasMessage("The piece \"a\" is of kind \"unknown\", which is not given.");
    }
}
