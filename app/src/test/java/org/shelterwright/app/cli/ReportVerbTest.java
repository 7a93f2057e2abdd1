package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class ReportVerbTest {

    @TempDir
    Path folder;

    @Test
    void writesTheDocumentsOfALayoutAndSaysWhich() throws IOException {
        Path out = folder.resolve("out");

        Ran ran = Ran.of(
                "report",
                "sample:river-post",
                "--out",
                out,
                "--owner",
                "Varn Valley Flood Service",
                "--date",
                "2026-03-01");

        assertThat(ran.status()).as(ran.err()).isIn(0, 1);
        assertThat(ran.outLines().get(0)).startsWith("River Post: ");
        assertThat(ran.out()).contains("written to " + out + ":", "general-arrangement.pdf", "ledger.xlsx", ".glb");
        assertThat(Files.readString(out.resolve("00-contents.txt")))
                .contains("Varn Valley Flood Service", "2026-03-01", "Shelterwright ");
    }

    @Test
    void jsonHasTheDocumentedShape() {
        Ran ran = Ran.of("report", "sample:too-much", "--out", folder.resolve("out"), "--json");

        JsonNode root = ran.json();
        assertThat(FitVerbTest.keys(root))
                .containsExactly("format", "version", "program", "data", "status", "id", "name", "folder", "files");
        assertThat(root.get("format").asString()).isEqualTo("shelterwright-result-report");
        assertThat(FitVerbTest.elements(root.get("files")))
                .allSatisfy(file -> assertThat(folder.resolve("out").resolve(file.asString()))
                        .exists());
    }

    @Test
    void dateThatIsNoneIsRefused() {
        Ran ran = Ran.of("report", "sample:river-post", "--out", folder.resolve("out"), "--date", "1 March");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("\"1 March\" is no date. Write year, month and day: 2026-03-01.");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void folderMustBeNamed() {
        Ran ran = Ran.of("report", "sample:river-post");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("--out");
    }
}
