package org.shelterwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.table.PieceList;
import org.shelterwright.catalog.table.PieceRow;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

/** The workbook of pieces is one that is read again as a list of pieces. */
class PieceTablesTest {
    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void theWorkbookIsReadAsTheSamePieces(String sample) {
        Layout layout = LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout();
        byte[] bytes = Xlsx.write(List.of(PieceTables.of(Checker.standard().scene(layout))));

        List<PieceRow> rows =
                PieceList.read(new InputFile("pieces.xlsx", bytes)).rows();

        List<PieceSpec> specs = layout.brief().listed().pieces();
        assertThat(rows).hasSameSizeAs(specs).hasSizeGreaterThan(30);
        for (int i = 0; i < rows.size(); i++) {
            PieceSpec spec = specs.get(i);
            PieceRow row = rows.get(i);
            Piece kind = layout.contents().kinds().get(spec.kind());
            assertThat(row.kind().name()).isEqualTo(spec.name());
            assertThat(row.kind().size()).as(spec.id()).isEqualTo(kind.size());
            assertThat(row.kind().mass().massKg())
                    .as(spec.id())
                    .isEqualTo(kind.mass().massKg());
            assertThat(row.kind().mount().isPresent()).as(spec.id()).isEqualTo(kind.rack() != null);
            assertThat(row.owner()).as(spec.id()).isEqualTo(spec.owner());
            assertThat(row.within())
                    .as(spec.id())
                    .isEqualTo(layout.contents().places().get(spec.id()).unit());
        }
    }
}
