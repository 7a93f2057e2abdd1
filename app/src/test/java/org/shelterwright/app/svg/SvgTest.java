package org.shelterwright.app.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgTest {

    private final Drawing drawing = new Drawing(
            "A <test> & more",
            420,
            297,
            List.of(
                    Polygon.of(new Bounds(10, 20, 110, 22), Colour.of(0x0B5A9C).with(0.5), null),
                    new Group("layer", List.of(Lettering.of("Rack <1> & \"2\"", new Spot(5, 5), 2.5))),
                    Lines.of(Pen.of(0.25, Colour.BLACK).with(LineType.DASHED), new Spot(0, 0), new Spot(1.0 / 3, 1))));

    @Test
    void oneUserUnitIsOneMillimetreAndTextStaysText() throws Exception {
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(new Svg(new Typeface()).write(drawing)));

        Element root = document.getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("420mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 420 297");
        assertThat(root.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("Rack <1> & \"2\"");
        assertThat(((Element) root.getElementsByTagName("g").item(0)).getAttribute("class"))
                .isEqualTo("layer");
        Element bar = (Element) root.getElementsByTagName("path").item(0);
        assertThat(bar.getAttribute("d")).isEqualTo("M10 20L110 20L110 22L10 22Z");
        assertThat(bar.getAttribute("fill-opacity")).isEqualTo("0.5");
    }

    @Test
    void numbersAreShortAndDashesFollowTheLineWidth() {
        String text = new String(new Svg(new Typeface()).write(drawing), StandardCharsets.UTF_8);

        assertThat(text).contains("M0 0L0.333 1").contains("stroke-dasharray=\"2 0.75\"");
    }

    @Test
    void equalInputGivesEqualBytes() {
        assertThat(new Svg(new Typeface()).write(drawing)).isEqualTo(new Svg(new Typeface()).write(drawing));
    }
}
