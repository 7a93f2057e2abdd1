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
    void lineWithAnotherCountOfCellsIsRefused() {
        TextTable table = new TextTable(Column.text("A"), Column.text("B"));

        assertThatThrownBy(() -> table.row("x")).isInstanceOf(IllegalStateException.class);
    }
}
