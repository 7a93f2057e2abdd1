package org.shelterwright.app.elevation;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.ReaderException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

/** Labels of both samples: one for every place, empty or not, and every piece but blanking panels, read back from what is drawn. */
class LabelSheetsTest {
    private static final int MODULES = 21;

    private static Scene scene(String sample) {
        return Checker.standard()
                .scene(LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout());
    }

    /** The codes that are due, from the files alone. */
    private static List<String> due(Scene scene) {
        Codes codes = new Codes(scene);
        TreeSet<String> due = new TreeSet<>();
        for (PieceSpec spec : scene.brief().listed().pieces()) {
            var kind = scene.layout().contents().kinds().get(spec.kind());
            if (kind.mount().filter(mount -> mount.blank()).isEmpty()) {
                due.add(codes.piece(spec.id()));
            }
        }
        for (UnitSpec unit : scene.brief().units()) {
            var item = scene.layout().item(unit);
            item.bays().forEach(bay -> due.add(codes.place(unit.id(), bay.name())));
            item.stowages().forEach(place -> due.add(codes.place(unit.id(), place.name())));
        }
        return List.copyOf(due);
    }

    private static String read(Group group) throws ReaderException {
        List<Polygon> dark = group.shapes().stream().map(Polygon.class::cast).toList();
        double left = dark.stream()
                .flatMap(LabelSheetsTest::corners)
                .mapToDouble(Spot::x)
                .min()
                .orElseThrow();
        double right = dark.stream()
                .flatMap(LabelSheetsTest::corners)
                .mapToDouble(Spot::x)
                .max()
                .orElseThrow();
        double top = dark.stream()
                .flatMap(LabelSheetsTest::corners)
                .mapToDouble(Spot::y)
                .min()
                .orElseThrow();
        double module = (right - left) / MODULES;
        BitMatrix bits = new BitMatrix(MODULES);
        for (int row = 0; row < MODULES; row++) {
            for (int column = 0; column < MODULES; column++) {
                double x = left + (column + 0.5) * module;
                double y = top + (row + 0.5) * module;
                if (dark.stream().anyMatch(one -> covers(one, x, y))) {
                    bits.set(column, row);
                }
            }
        }
        return new Decoder().decode(bits).getText();
    }

    private static Stream<Spot> corners(Polygon polygon) {
        return polygon.corners().stream();
    }

    private static boolean covers(Polygon box, double x, double y) {
        Spot low = box.corners().get(0);
        Spot high = box.corners().get(2);
        return low.x() < x && x < high.x() && low.y() < y && y < high.y();
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyPlaceAndPieceHasOneLabelThatAMachineReads(String sample) throws ReaderException {
        Scene scene = scene(sample);
        List<Drawing> pages = new LabelSheets(new Typeface(), scene).pages();
        List<String> read = new ArrayList<>();
        for (Drawing page : pages) {
            List<String> texts = page.labels().stream().map(Label::text).toList();
            for (Shape shape : page.shapes()) {
                if (shape instanceof Group group) {
                    String code = read(group);
                    assertThat(texts).contains(code);
                    read.add(code);
                }
            }
        }

        assertThat(read).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(due(scene));
        assertThat(read).hasSizeGreaterThan(40);
    }
}
