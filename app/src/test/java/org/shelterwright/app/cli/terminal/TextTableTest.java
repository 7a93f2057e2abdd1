package org.shelterwright.app.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.shelterwright.app.cli.terminal.TextTable.Column;

class TextTableTest {

    @Test
    void columnsAreAsWideAsTheirWidestCellAndFiguresStandRight() {
        TextTable table = new TextTable(Column.text("Limit"), Column.figures("Use"), Column.text("State"));
        table.row("Rear axle", "97.3 %", "fuel full").note("    Move it.").row("µ", "5 %", "");

        assertThat(table.lines())
                .containsExactly(
                        "Limit         Use  State",
                        "Rear axle  97.3 %  fuel full",
                        "    Move it.",
                        "µ             5 %");
    }

    @Test
    void lineBreakInACellDoesNotBreakTheTable() {
        TextTable table = new TextTable(Column.text("A"), Column.text("B")).row("x\ny", "z");

        assertThat(table.lines()).containsExactly("A    B", "x y  z");
    }

    @Test
    void whatIsTooWideGoesOnBelow() {
        TextTable table = new TextTable(Column.figures("No"), Column.text("What"));
        table.row("1", "word ".repeat(21).strip()).note("    " + "note ".repeat(20) + " end");

        assertThat(table.lines())
                .containsExactly(
                        "No  What",
                        " 1  " + "word ".repeat(19).strip(),
                        "    word word",
                        "    " + "note ".repeat(19).strip(),
                        "    note  end");
    }

    @Test
    void aWordThatIsTooLongStaysWhole() {
        assertThat(TextTable.wrapped("  a " + "b".repeat(20) + " c", 10))
                .containsExactly("  a", "  " + "b".repeat(20), "  c");
    }

    @Test
    void lineWithAnotherCountOfCellsIsRefused() {
        TextTable table = new TextTable(Column.text("A"), Column.text("B"));

        assertThatThrownBy(() -> table.row("x")).isInstanceOf(IllegalStateException.class);
    }
}
