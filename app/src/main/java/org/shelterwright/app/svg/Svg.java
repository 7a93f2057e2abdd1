package org.shelterwright.app.svg;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.type.Typeface;

/**
 * Writes drawings as SVG 1.1 at true scale: one user unit is one millimetre. Text stays text, held to its width by
 * {@code textLength}, so that it keeps its place where the typeface is not installed. Equal drawings give equal bytes.
 */
public final class Svg {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private final Typeface typeface;

    public Svg(Typeface typeface) {
        this.typeface = typeface;
    }

    /** Gives the file, in UTF-8. Cost: linear in the shapes. */
    public byte[] write(Drawing drawing) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.writeStartElement("svg");
            xml.writeDefaultNamespace(NAMESPACE);
            String width = SvgCanvas.number(drawing.width());
            String height = SvgCanvas.number(drawing.height());
            xml.writeAttribute("width", width + "mm");
            xml.writeAttribute("height", height + "mm");
            xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
            xml.writeAttribute("font-family", "'" + Typeface.FAMILY + "','DejaVu Sans',sans-serif");
            xml.writeAttribute("stroke-linejoin", "round");
            xml.writeStartElement("title");
            xml.writeCharacters(drawing.title());
            xml.writeEndElement();
            xml.writeCharacters("\n");
            drawing.onto(new SvgCanvas(xml, typeface));
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("Writing into memory cannot fail.", e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
