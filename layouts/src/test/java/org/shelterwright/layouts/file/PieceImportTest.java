package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.table.PieceList;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.Layout;

/** A list of pieces joins the inventory of a layout. */
class PieceImportTest {
    private static PieceImport.Result into(Layout layout, String text) {
        return PieceImport.into(layout, PieceList.read(new InputFile("p.csv", text.getBytes(StandardCharsets.UTF_8))));
    }

    @Test
    void piecesAreAddedWithTheirQuantities() {
        PieceImport.Result result = into(
                FilledPost.layout(), "Name,Depth [mm],Width [mm],Height [mm],Quantity,Task\nLamp,120,80,80,2,Watch\n");

        assertThat(result.pieces()).isEqualTo(2);
        assertThat(result.layout().brief().listed().pieces())
                .extracting(PieceSpec::id)
                .containsExactly("radio", "lamp", "lamp-2-1", "lamp-2-2");
        assertThat(result.layout()
                        .brief()
                        .listed()
                        .piece("lamp-2-1")
                        .orElseThrow()
                        .task())
                .isEqualTo("watch");
        assertThat(result.layout().contents().places()).hasSize(2);
        assertThat(LayoutFiles.read(new InputFile("l.json", LayoutFiles.bytes(result.layout())))
                        .layout())
                .isEqualTo(result.layout());
    }

    @Test
    void anUnknownUnitIsToldAndATaskIsAdded() {
        PieceImport.Result result = into(
                FilledPost.layout(),
                "Name,Depth [mm],Width [mm],Height [mm],Unit,Task\nRope,120,80,80,nowhere,River work\n");

        assertThat(result.notes()).anyMatch(note -> note.startsWith("The unit \"nowhere\" of Rope is not known."));
        assertThat(result.layout().brief().listed().task("river-work")).isPresent();
    }
}
