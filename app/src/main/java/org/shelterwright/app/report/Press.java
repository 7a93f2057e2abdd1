package org.shelterwright.app.report;

import java.util.List;
import java.util.Locale;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.pdf.Pdf;
import org.shelterwright.app.picture.Png;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.app.type.Typeface;

/** What one thread makes the files of documents with. Not for several threads at once, as its typeface is not. */
record Press(Typeface typeface, Svg svg, Png png, Pdf pdf) {
    /** @param program program and version, such as "Shelterwright 0.1.0" */
    static Press of(String program) {
        Typeface typeface = new Typeface();
        return new Press(typeface, new Svg(typeface), new Png(typeface), new Pdf(program));
    }

    byte[] pdf(Issue issue, String what, List<Drawing> pages) {
        return pdf.write(
                issue.name() + ", " + what.toLowerCase(Locale.ROOT),
                issue.particulars().date(),
                pages);
    }
}
