package org.shelterwright.app.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Canvas;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.type.Typeface;

/** Puts shapes into an SVG document, one element a line. */
final class SvgCanvas implements Canvas {

    private final XMLStreamWriter xml;
    private final Typeface typeface;

    SvgCanvas(XMLStreamWriter xml, Typeface typeface) {
        this.xml = xml;
        this.typeface = typeface;
    }

    /** A number with at most three decimals, without needless zeros. */
    static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    @Override
    public void polygon(List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen) {
        put(() -> {
            xml.writeEmptyElement("path");
            xml.writeAttribute("d", path(corners) + "Z");
            paint(fill, pen);
        });
    }

    @Override
    public void lines(List<List<Spot>> lines, Pen pen) {
        put(() -> {
            xml.writeEmptyElement("path");
            xml.writeAttribute("d", lines.stream().map(SvgCanvas::path).collect(Collectors.joining()));
            paint(null, pen);
        });
    }

    @Override
    public void circle(Spot centre, double radius, @Nullable Colour fill, @Nullable Pen pen) {
        put(() -> {
            xml.writeEmptyElement("circle");
            xml.writeAttribute("cx", number(centre.x()));
            xml.writeAttribute("cy", number(centre.y()));
            xml.writeAttribute("r", number(radius));
            paint(fill, pen);
        });
    }

    @Override
    public void label(Label label) {
        put(() -> {
            xml.writeStartElement("text");
            xml.writeAttribute("x", number(label.at().x()));
            xml.writeAttribute("y", number(label.at().y()));
            xml.writeAttribute("font-size", number(label.size()));
            if (label.weight() != Weight.REGULAR) {
                xml.writeAttribute("font-weight", label.weight() == Weight.MEDIUM ? "500" : "600");
            }
            if (label.align() != Label.Align.START) {
                xml.writeAttribute("text-anchor", label.align() == Label.Align.MIDDLE ? "middle" : "end");
            }
            if (label.turn() != 0) {
                xml.writeAttribute(
                        "transform",
                        "rotate(-" + label.turn() + " " + number(label.at().x()) + " "
                                + number(label.at().y()) + ")");
            }
            xml.writeAttribute("textLength", number(typeface.width(label)));
            xml.writeAttribute("lengthAdjust", "spacingAndGlyphs");
            colour("fill", label.colour());
            xml.writeCharacters(label.text());
            xml.writeEndElement();
        });
    }

    @Override
    public void group(String name, Runnable content) {
        put(() -> {
            xml.writeStartElement("g");
            xml.writeAttribute("class", name);
        });
        content.run();
        put(xml::writeEndElement);
    }

    private void paint(@Nullable Colour fill, @Nullable Pen pen) throws XMLStreamException {
        if (fill == null) {
            xml.writeAttribute("fill", "none");
        } else {
            colour("fill", fill);
        }
        if (pen != null) {
            colour("stroke", pen.colour());
            xml.writeAttribute("stroke-width", number(pen.width()));
            if (pen.type() != LineType.CONTINUOUS) {
                xml.writeAttribute(
                        "stroke-dasharray",
                        Arrays.stream(pen.type().dashes(pen.width()))
                                .mapToObj(SvgCanvas::number)
                                .collect(Collectors.joining(" ")));
            }
        }
    }

    private void colour(String attribute, Colour colour) throws XMLStreamException {
        xml.writeAttribute(attribute, String.format(Locale.ROOT, "#%06X", colour.rgb()));
        if (colour.opacity() < 1) {
            xml.writeAttribute(attribute + "-opacity", number(colour.opacity()));
        }
    }

    private static String path(List<Spot> spots) {
        StringBuilder path = new StringBuilder();
        for (Spot spot : spots) {
            path.append(path.length() == 0 ? 'M' : 'L')
                    .append(number(spot.x()))
                    .append(' ')
                    .append(number(spot.y()));
        }
        return path.toString();
    }

    private void put(Element element) {
        try {
            element.write();
            xml.writeCharacters("\n");
        } catch (XMLStreamException e) {
            throw new IllegalStateException("Writing into memory cannot fail.", e);
        }
    }

    private interface Element {
        void write() throws XMLStreamException;
    }
}
