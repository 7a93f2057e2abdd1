package org.shelterwright.app.elevation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.racks.FilledBay;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

/** Drawings of what is inside the units of the sample. */
class InsideDocumentsTest {
    private static final Scene SCENE = scene();
    private static final Typeface TYPEFACE = new Typeface();

    private static Scene scene() {
        Layout layout =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
        return Checker.standard().scene(layout);
    }

    private static Drawing elevation() {
        FilledBay bay = FilledBay.of(SCENE).get(0);
        return new RackElevation(TYPEFACE, new Codes(SCENE), bay)
                .sheet(
                        "River Post",
                        "rp-15",
                        "1 / 2",
                        "test",
                        Particulars.draft(LocalDate.of(2026, 1, 2)),
                        List.of("A note."),
                        List.of(new BayLimits.Line("Mass in the rack", "91.8 kg", "160 kg", "met")));
    }

    @Test
    void theElevationTellsTheLimitsOfItsBay() {
        assertThat(elevation().labels())
                .extracting(label -> label.text())
                .contains("Limit", "is", "may be", "Mass in the rack", "91.8 kg", "160 kg", "met");
    }

    @Test
    void limitsThatDoNotFitAreCounted() {
        BayLimits.Line line = new BayLimits.Line("Mass in the rack", "91.8 kg", "160 kg", "met");

        assertThat(new Drawing(
                                "limits",
                                200,
                                100,
                                new BayLimits(TYPEFACE).shapes(Collections.nCopies(20, line), 10, 10, 60))
                        .labels())
                .extracting(label -> label.text())
                .contains("and 10 more: see the ledger");
    }

    @Test
    void theElevationIsTrueToScale() {
        List<Polygon> frames = elevation().shapes().stream()
                .filter(shape -> shape instanceof Group group && group.name().equals("front"))
                .flatMap(shape -> ((Group) shape).shapes().stream())
                .filter(Polygon.class::isInstance)
                .map(Polygon.class::cast)
                .toList();

        double height =
                frames.stream().mapToDouble(InsideDocumentsTest::height).max().orElseThrow();

        // 34 U are 1 511.3 mm; at 1:10 on paper 151.13 mm.
        assertThat(height).isCloseTo(151.13, within(1e-9));
    }

    private static double height(Polygon polygon) {
        double low = polygon.corners().stream().mapToDouble(Spot::y).min().orElseThrow();
        double high = polygon.corners().stream().mapToDouble(Spot::y).max().orElseThrow();
        return high - low;
    }

    @Test
    void theElevationNamesEveryPieceAndItsUnits() {
        List<String> texts = elevation().labels().stream().map(Label::text).toList();

        assertThat(texts)
                .contains(
                        "Front",
                        "Rear",
                        "34 U = 1511.3",
                        "Telemetry server",
                        "Backup supply 1",
                        "P001",
                        "strip A",
                        "A note.");
    }

    @Test
    void everyPlaceAndPieceHasItsOwnLabel() {
        List<String> texts = new LabelSheets(TYPEFACE, SCENE)
                .pages().stream()
                        .flatMap(page -> page.labels().stream())
                        .map(Label::text)
                        .toList();
        List<String> codes = texts.stream()
                .filter(text -> text.matches("P\\d{3}|U\\d{2}-[A-Z]"))
                .toList();

        assertThat(codes).doesNotHaveDuplicates().hasSizeGreaterThan(50);
        assertThat(codes).contains("P031", "U10-B", "U01-A");
    }
}
