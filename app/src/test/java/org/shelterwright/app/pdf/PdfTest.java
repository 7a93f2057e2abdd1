package org.shelterwright.app.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Lettering;

class PdfTest {

    private static final LocalDate DATE = LocalDate.of(2026, 1, 15);

    private final Drawing drawing = new Drawing(
            "test",
            594,
            420,
            List.of(
                    Polygon.of(new Bounds(100, 50, 200, 52), Colour.BLACK, null),
                    Lettering.of("Mass 2\u2009400\u2009kg, −38 mm × 5 °", new Spot(100, 80), 2.5)));

    @Test
    void aBarOf100MillimetresMeasures100Millimetres() throws IOException {
        try (PDDocument document = Loader.loadPDF(write())) {
            // ISO 216: A2 is 420 mm × 594 mm; a PDF point is 1/72 in.
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(594 / 25.4f * 72, within(0.01f));
            List<Bounds> filled = FilledPaths.on(document.getPage(0));
            assertThat(filled).hasSize(1);
            assertThat(filled.get(0).width() / 72 * 25.4).isCloseTo(100, within(0.001));
            assertThat(filled.get(0).y1() / 72 * 25.4).isCloseTo(420 - 50, within(0.001));
        }
    }

    @Test
    void textCanBeReadBackAndItsFontIsInside() throws IOException {
        try (PDDocument document = Loader.loadPDF(write())) {
            String text = new PDFTextStripper().getText(document).replace('\u2009', ' ');
            assertThat(text).contains("Mass 2 400 kg, −38 mm × 5 °");
            for (var name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).contains("IBMPlexSans");
            }
        }
    }

    @Test
    void equalInputGivesEqualBytes() {
        assertThat(write()).isEqualTo(write());
    }

    private byte[] write() {
        return new Pdf("Shelterwright 0").write("test", DATE, List.of(drawing));
    }
}
