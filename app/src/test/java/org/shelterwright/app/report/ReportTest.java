package org.shelterwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.TestIssue;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.pdf.FilledPaths;
import org.shelterwright.catalog.json.InputException;

class ReportTest {

    private static final TestIssue ISSUE = TestIssue.riverPost();

    @TempDir
    private static Path folder;

    private static List<Document> documents = List.of();

    @BeforeAll
    static void write() {
        documents = write(folder.resolve("new/report"));
    }

    @Test
    void allDocumentsAreNumberedWrittenAndListed() throws IOException {
        String contents = Files.readString(folder.resolve("new/report/00-contents.txt"));

        assertThat(documents)
                .extracting(Document::file)
                .contains(
                        "00-contents.txt",
                        "01-general-arrangement.pdf",
                        "01-general-arrangement.svg",
                        "02-ledger.pdf",
                        "02-ledger.csv",
                        "02-ledger.xlsx",
                        "03-mass-statement.pdf",
                        "03-mass-statement.xlsx",
                        "04-picture-on-station-rear-right.png",
                        "04-picture-on-the-road-plan.svg",
                        "05-model-on-the-road.glb",
                        "06-restraint.pdf",
                        "06-restraint.csv",
                        "06-restraint.xlsx",
                        "06-lifting.pdf",
                        "06-lifting.csv",
                        "06-lifting.xlsx",
                        "07-electrical-load-list.pdf",
                        "07-electrical-loads.csv",
                        "07-electrical-load-list.xlsx",
                        "08-heat-balance.pdf",
                        "08-heat-balance.csv");
        for (Document document : documents) {
            assertThat(folder.resolve("new/report").resolve(document.file())).hasBinaryContent(document.bytes());
            assertThat(document.line()).isNotBlank();
            assertThat(document.file().startsWith("00") || contents.contains(document.file()))
                    .isTrue();
        }
        assertThat(contents).contains("River Post", "seed 4207", "2026-01-15", Issue.CAUTION);
        try (Stream<Path> files = Files.list(folder.resolve("new/report"))) {
            assertThat(files).hasSize(documents.size());
        }
    }

    @Test
    void equalInputGivesEqualBytesExceptWorkbooks() {
        List<Document> again = write(folder.resolve("again"));

        for (int i = 0; i < documents.size(); i++) {
            if (!documents.get(i).file().endsWith(".xlsx")) {
                assertThat(again.get(i).bytes())
                        .as(documents.get(i).file())
                        .isEqualTo(documents.get(i).bytes());
            }
        }
    }

    @Test
    void theLedgerOpensWithTheVerdictAndSaysWhatIsMissingAndNotModelled() throws IOException {
        String text = text("02-ledger.pdf");

        assertThat(text.indexOf("broken")).isLessThan(text.indexOf("Inputs and assumptions"));
        assertThat(text).contains("Governing: ", "What is missing", "What is not modelled", "Breakers, earthing", "seed 4207");
        assertThat(oneLine(text)).contains(Issue.CAUTION);
    }

    @Test
    void theMassStatementHasTheArmsAndMomentsOfTheUnits() throws IOException {
        // Rack 1: 212 kg; centre at x 2998 + 300, y 2100 − 400, z 900.
        assertThat(text("03-mass-statement.pdf"))
                .contains("rack 1 Rack 1 1 212.0 S")
                .contains("3 298 1 700 900");
    }

    @Test
    void theControlBarOfTheDrawingMeasures100MillimetresInThePdf() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document("01-general-arrangement.pdf"))) {
            double field = 10 / 25.4 * 72;
            List<Bounds> fields = FilledPaths.on(pdf.getPage(0)).stream()
                    .filter(b -> Math.abs(b.width() - field) < 0.01 && Math.abs(b.height() - 2.4 / 25.4 * 72) < 0.01)
                    .toList();

            Bounds bar = fields.stream().reduce(Bounds::hull).orElseThrow();
            assertThat(fields).hasSize(10);
            assertThat(bar.width() / 72 * 25.4).isCloseTo(100, within(0.01));
        }
    }

    @Test
    void theTitleBlockIsFilled() throws IOException {
        assertThat(text("01-general-arrangement.pdf"))
                .contains(
                        "Varn Valley Flood Service",
                        "General arrangement",
                        "river-post-ga",
                        "1:20",
                        "A2",
                        "first angle")
                .contains("R. Fitter", "not approved", "2026-01-15", "Projection");
    }

    @Test
    void aPlaceThatIsAFileGivesAClearSentenceAndIsLeftAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");

        assertThatThrownBy(() -> write(file))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("this is a file, not a folder")
                .hasMessageContaining("Choose another folder");
        assertThat(file).hasContent("mine");
    }

    @Test
    void aFolderInTheWayOfADocumentLeavesNoHalfWrittenFiles() throws IOException {
        Path target = folder.resolve("blocked");
        Files.createDirectories(target.resolve("02-ledger.pdf/full"));

        assertThatThrownBy(() -> write(target))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("blocked");
        try (Stream<Path> files = Files.list(target)) {
            assertThat(files.map(path -> path.getFileName().toString())).noneMatch(name -> name.endsWith(".part"));
        }
    }

    private static List<Document> write(Path target) {
        return new Report("Shelterwright 0.1.0").write(ISSUE.scene(), ISSUE.ledger(), ISSUE.particulars(), target);
    }

    private static byte[] document(String name) {
        return documents.stream()
                .filter(document -> document.file().equals(name))
                .findFirst()
                .orElseThrow()
                .bytes();
    }

    private static String text(String name) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document(name))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return new String(stripper.getText(pdf).getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8)
                    .replace('\u2009', ' ');
        }
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
