package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Standard error is for what people must know: no library says anything there while all goes well. */
class QuietLibrariesTest {
    @TempDir
    Path folder;

    @Test
    void noVerbLetsALibrarySpeak() {
        PrintStream before = System.err;
        ByteArrayOutputStream caught = new ByteArrayOutputStream();
        System.setErr(new PrintStream(caught, true, StandardCharsets.UTF_8));
        try {
            Ran.of("check", "sample:water-lab");
            Ran.of("report", "sample:water-lab", "--out", folder.resolve("report"));
            Ran.of("fit", "sample:water-lab", "--moves", "2000", "--out", folder.resolve("fit"));
            Ran.of("catalog", "list");
            Ran.of("catalog", "import", folder.resolve("report").resolve("02-ledger.xlsx"));
        } finally {
            System.setErr(before);
        }

        assertThat(caught.toString(StandardCharsets.UTF_8)).isEmpty();
    }
}
