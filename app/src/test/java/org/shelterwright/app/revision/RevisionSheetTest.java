package org.shelterwright.app.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.FewColours;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.picture.Png;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.PutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.insight.Grown;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.ItemChange;

class RevisionSheetTest {
    private static final Layout BEFORE =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

    private static Revision revision() {
        Item battery = BEFORE.parts().item("battery-box-24v");
        Layout larger = Grown.items(
                BEFORE, Map.of(battery.id(), new ItemChange(battery.id(), 60_000, null, null, 18.0).of(battery)));
        Place old = larger.placements().get("winch-crate").station();
        Place there = old.with(old.pose().moved(new Point(-25_000, 0, 0)));
        return Revision.of(Checker.standard(), BEFORE, new PutUnit("winch-crate", there).apply(larger));
    }

    @Test
    void everythingStandsOnOnePageAndNoTextOverAnother() throws IOException {
        Drawing page = new RevisionDocuments("Shelterwright 1.0").sheet(revision(), LocalDate.of(2026, 3, 1));

        assertThat(page.width()).isEqualTo(420);
        Bounds sheet = new Bounds(8, 5, page.width() - 5, page.height() - 4);
        Typeface typeface = new Typeface();
        List<Label> labels = new ArrayList<>();
        for (Shape shape : page.shapes()) {
            if (shape instanceof Label label) {
                labels.add(label);
            }
        }
        assertThat(labels)
                .extracting(Label::text)
                .contains("Before", "After", "Kept", "Units", "Winch crate", "−25, 0, 0");
        for (Label label : labels) {
            Bounds room = typeface.bounds(label);
            assertThat(sheet.x0() <= room.x0() && room.x1() <= sheet.x1())
                    .as(label.text())
                    .isTrue();
            assertThat(sheet.y0() <= room.y0() && room.y1() <= sheet.y1())
                    .as(label.text())
                    .isTrue();
            assertThat(labels)
                    .filteredOn(
                            other -> other != label && typeface.bounds(other).overlaps(room))
                    .as(label.text())
                    .isEmpty();
        }
        if (Boolean.getBoolean("desk.pictures.write")) {
            var picture = ImageIO.read(new ByteArrayInputStream(new Png(typeface).write(page)));
            Path file = FewColours.write(picture, Path.of("..", "docs", "pictures", "revisions.png"));
            assertThat(Files.size(file)).isLessThan(400_000);
        }
    }

    @Test
    void theTableHoldsWhatDiffers() {
        String table = new String(new RevisionDocuments("Shelterwright 1.0")
                .write(revision(), LocalDate.of(2026, 3, 1))
                .get(2)
                .bytes());

        assertThat(table)
                .contains("unit,Winch crate,")
                .contains("unit,Battery box,")
                .contains("document,Work pack,");
    }
}
