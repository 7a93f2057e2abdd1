package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.solver.bench.LoadRows.Row;
import org.shelterwright.solver.load.model.Support;

class LoadRowsTest {
    @TempDir
    Path folder;

    private static Row row(int problem, double seconds) {
        return new Row(Support.FULL, seconds, "cpu", 1, 4, problem, 10, 106, 95.25, 1_000_000, 5.001);
    }

    @Test
    void keepsEachRunAndLeavesOutALineThatWasCutOff() throws IOException {
        Path file = folder.resolve("below/runs.csv");
        LoadRows rows = new LoadRows(file);
        assertThat(rows.read()).isEmpty();

        rows.add(row(1, 5));
        rows.add(row(2, 5));
        Files.writeString(file, "full,5.0,cpu,1,4,3,10,1", StandardOpenOption.APPEND);

        assertThat(new LoadRows(file).read()).containsExactly(row(1, 5), row(2, 5));
        assertThat(Files.readAllLines(file).get(0)).isEqualTo(LoadRows.HEAD);
    }

    @Test
    void theSameRunIsToldByWhatWasAsked() {
        assertThat(row(1, 5).sameRun(row(1, 5))).isTrue();
        assertThat(row(1, 5).sameRun(row(2, 5))).isFalse();
        assertThat(row(1, 5).sameRun(row(1, 30))).isFalse();
    }

    @Test
    void aLineWithOtherCellsIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("runs.csv"), LoadRows.HEAD + "\nfull,5.0\n");

        assertThatThrownBy(() -> new LoadRows(file).read())
                .hasMessageStartingWith("\"full,5.0\" has 2 cells, not the 11 of support,seconds,");
    }
}
