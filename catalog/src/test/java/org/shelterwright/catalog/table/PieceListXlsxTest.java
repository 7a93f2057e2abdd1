package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Size;

/** A spreadsheet of 400 pieces with planted gaps and mistakes, written as a workbook and as CSV: the same is told of both. */
class PieceListXlsxTest {
    private static final int ROWS = 400;
    private static final List<String> HEADS = List.of(
            "Name", "Depth [mm]", "Width [mm]", "Height [mm]", "Mass [kg]", "Quantity", "Fragile", "Class", "Urgency");

    private final List<List<Object>> table = new ArrayList<>();
    /** What must be told, as address and sentence. */
    private final List<String> told = new ArrayList<>();

    private int left;
    private int withoutMass;

    /** Every 11th row has one of ten mistakes, in turn, in a known cell; every 13th other row has no mass. */
    private void plant() {
        for (int i = 1; i <= ROWS; i++) {
            int row = i + 1;
            List<Object> cells = new ArrayList<>(List.of(
                    "Piece " + i, 100 + i % 50, 80.5, 60, 1.25, 1 + i % 3, i % 2 == 0 ? "yes" : "no", "", "soon"));
            if (i % 11 == 0) {
                mistake(i / 11 % 10, row, cells);
            } else if (i % 13 == 0) {
                cells.set(4, "");
                withoutMass++;
            }
            table.add(cells);
        }
    }

    private void mistake(int kind, int row, List<Object> cells) {
        switch (kind) {
            case 0 -> leftOut(row, cells, 0, "", "B", "usable name");
            case 1 -> leftOut(row, cells, 1, "", "A", "usable depth");
            case 2 -> {
                told.add("C" + row + ": \"wide\" is no number, and was not used.");
                leftOut(row, cells, 2, "wide", "A", "usable width");
            }
            case 3 -> {
                told.add("D" + row + ": \"-60\" was not used: a height must be above zero and below 100 m.");
                leftOut(row, cells, 3, -60, "A", "usable height");
            }
            case 4 -> {
                withoutMass++;
                dropped(row, cells, 4, "heavy", "E", "is no number, and was not used.");
            }
            case 5 -> {
                withoutMass++;
                dropped(row, cells, 4, 0, "E", "was not used: a mass must be above zero.");
            }
            case 6 -> dropped(row, cells, 5, 2.5, "F", "was not used: it must be a whole number from 1 to 1000.");
            case 7 -> dropped(row, cells, 6, "maybe", "G", "was not used: it must be yes or no.");
            case 8 -> dropped(row, cells, 7, "sour", "H", "was not used: it is no hazard class such as 3 or 5.1.");
            default ->
                dropped(
                        row,
                        cells,
                        8,
                        "at dawn",
                        "I",
                        "was not used: it must be at once, soon or later; later was taken.");
        }
    }

    private void leftOut(int row, List<Object> cells, int column, Object value, String at, String what) {
        cells.set(column, value);
        told.add(at + row + ": The row was left out: it gives no " + what + ".");
        left++;
    }

    private void dropped(int row, List<Object> cells, int column, Object value, String letter, String why) {
        cells.set(column, value);
        told.add(letter + row + ": \"" + value + "\" " + why);
    }

    private InputFile workbook() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "test", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("Pieces");
            for (int c = 0; c < HEADS.size(); c++) {
                sheet.value(0, c, HEADS.get(c));
                for (int r = 0; r < table.size(); r++) {
                    Object cell = table.get(r).get(c);
                    if (cell instanceof Number number) {
                        sheet.value(r + 1, c, number);
                    } else if (!cell.equals("")) {
                        sheet.value(r + 1, c, (String) cell);
                    }
                }
            }
        }
        return new InputFile("pieces.xlsx", bytes.toByteArray());
    }

    private InputFile csv() {
        String text = String.join(",", HEADS) + "\n"
                + table.stream()
                        .map(cells -> cells.stream().map(Object::toString).collect(Collectors.joining(",")))
                        .collect(Collectors.joining("\n"));
        return new InputFile("pieces.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private void assertToldAndTaken(PieceList list) {
        // Notes of row 1 tell of the table as a whole, such as how masses were taken.
        assertThat(list.notes().stream()
                        .filter(note -> !note.address().matches("[A-Z]1"))
                        .map(ImportNote::text))
                .containsExactlyInAnyOrderElementsOf(told);
        assertThat(list.rows()).hasSize(ROWS - left);
        assertThat(list.rows())
                .filteredOn(row -> row.kind().mass().massKg() == null)
                .hasSize(withoutMass);
        PieceRow last = list.rows().get(list.rows().size() - 1);
        assertThat(last.kind().name()).isEqualTo("Piece 400");
        assertThat(last.kind().size()).isEqualTo(new Size(100_000, 80_500, 60_000));
        assertThat(last.kind().mass().massKg()).isEqualTo(1.25);
        assertThat(last.quantity()).isEqualTo(2);
        assertThat(last.kind().loose().fragile()).isTrue();
    }

    @Test
    void everyMistakeOfAWorkbookIsToldWithItsCellAndTheRestIsTaken() throws IOException {
        plant();

        PieceList list = PieceList.read(workbook());

        // 36 rows have a mistake: 15 are left out, and two of the ten kinds are told twice.
        assertThat(left).isEqualTo(15);
        assertThat(told).hasSize(44);
        assertToldAndTaken(list);
    }

    @Test
    void theSameTableAsCsvGivesTheSame() throws IOException {
        plant();

        PieceList list = PieceList.read(csv());

        assertToldAndTaken(list);
        assertThat(list.rows()).isEqualTo(PieceList.read(workbook()).rows());
    }
}
