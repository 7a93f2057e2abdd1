package org.shelterwright.app.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.type.Typeface;

/**
 * Writes drawings as the pages of a PDF at true scale, with the typeface embedded. Equal drawings, title and date give
 * equal bytes: the document id and its dates follow from them alone.
 */
public final class Pdf {

    /** Points of a PDF in a millimetre. */
    static final double POINTS = 72 / 25.4;

    private final String creator;

    /** @param creator program and version */
    public Pdf(String creator) {
        this.creator = creator;
    }

    /**
     * Gives the file.
     *
     * @param date the date that the document bears
     */
    public byte[] write(String title, LocalDate date, List<Drawing> pages) {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId((title + date).hashCode() & 0xFFFFFFFFL);
            document.setDocumentInformation(information(title, date));
            Map<Weight, PDFont> fonts = fonts(document);
            for (Drawing drawing : pages) {
                add(document, drawing, fonts);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PDDocumentInformation information(String title, LocalDate date) {
        PDDocumentInformation information = new PDDocumentInformation();
        Calendar midnight = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        midnight.setTimeInMillis(date.atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli());
        information.setTitle(title);
        information.setCreator(creator);
        information.setCreationDate(midnight);
        information.setModificationDate(midnight);
        return information;
    }

    private static void add(PDDocument document, Drawing drawing, Map<Weight, PDFont> fonts) throws IOException {
        PDPage page =
                new PDPage(new PDRectangle((float) (drawing.width() * POINTS), (float) (drawing.height() * POINTS)));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            drawing.onto(new PdfCanvas(content, drawing.height(), fonts));
        }
    }

    private static Map<Weight, PDFont> fonts(PDDocument document) throws IOException {
        Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);
        for (Weight weight : Weight.values()) {
            try (InputStream in = Typeface.file(weight)) {
                fonts.put(weight, PDType0Font.load(document, in, true));
            }
        }
        return fonts;
    }
}
