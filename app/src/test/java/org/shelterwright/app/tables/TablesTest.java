package org.shelterwright.app.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TablesTest {

    /** RFC 4180, section 2: fields with commas, quotes or line breaks are quoted, quotes doubled, lines end in CRLF. */
    @Test
    void csvIsQuotedAsTheStandardSays() {
        Table table = new Table(
                "t",
                List.of("aaa", "b \"b\" b", "c,c"),
                List.of(Arrays.asList("zzz", null, "y\r\ny"), Arrays.asList(1234567.5, -3, "x")));

        assertThat(new String(Csv.write(table), StandardCharsets.UTF_8))
                .isEqualTo("aaa,\"b \"\"b\"\" b\",\"c,c\"\r\nzzz,,\"y\r\ny\"\r\n1234567.5,-3,x\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "=HYPERLINK(\"x\")"})
    void textsThatBeginLikeFormulasAreGuarded(String hostile) throws IOException {
        Table table = new Table("t", List.of("a"), List.of(List.of(hostile)));

        assertThat(new String(Csv.write(table), StandardCharsets.UTF_8).split("\r\n", 2)[1])
                .startsWith(hostile.contains("\"") || hostile.contains("\r") ? "\"'" : "'");
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(Xlsx.write(List.of(table))))) {
            Row row = book.getFirstSheet().read().get(1);
            assertThat(row.getCell(0).getType()).isEqualTo(CellType.STRING);
            assertThat(row.getCell(0).asString()).startsWith("'");
        }
    }

    @Test
    void aWorkbookHoldsTextsAndNumbers() throws IOException {
        Table table = new Table("Ledger", List.of("a", "b"), List.of(Arrays.asList("x", -2.5), Arrays.asList(null, 3)));

        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(Xlsx.write(List.of(table))))) {
            List<Row> rows = book.getFirstSheet().read();
            assertThat(book.getFirstSheet().getName()).isEqualTo("Ledger");
            assertThat(rows.get(1).getCellAsNumber(1).orElseThrow().doubleValue())
                    .isEqualTo(-2.5);
            assertThat(rows.get(2).getCellAsNumber(1).orElseThrow().intValue()).isEqualTo(3);
        }
    }

    @Test
    void aRowOfAnotherWidthAndANumberThatIsNoneAreRefused() {
        assertThatThrownBy(() -> new Table("t", List.of("a", "b"), List.of(List.of("x"))))
                .hasMessage("A row of the table \"t\" has 1 cells for 2 columns.");
        assertThatThrownBy(() -> new Table("t", List.of("a"), List.of(List.of(Double.NaN))))
                .hasMessageContaining("no finite number");
    }
}
