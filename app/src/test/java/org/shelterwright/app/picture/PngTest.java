package org.shelterwright.app.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.TestIssue;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Caption;
import org.shelterwright.app.view.IsometricPicture;
import org.shelterwright.app.view.PictureSheet;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.Scene;

class PngTest {

    private final Typeface typeface = new Typeface();
    private final Scene scene = TestIssue.riverPost().scene();

    @Test
    void aPictureIs2000PixelsWideAndTheSameEachTime() throws IOException {
        byte[] first = new Png(typeface).write(sheet());
        byte[] second = new Png(new Typeface()).write(sheet());

        BufferedImage image = ImageIO.read(new ByteArrayInputStream(first));
        assertThat(image.getWidth()).isEqualTo(2000);
        assertThat(image.getHeight()).isEqualTo(1400);
        assertThat(second).isEqualTo(first);
    }

    @Test
    void topsSidesAndEndsWearTheirThreeValues() throws IOException {
        PictureSheet sheet = sheet();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(new Png(typeface).write(sheet)));
        Box rack = scene.unit("rack-2").orElseThrow().outline(Situation.ON_STATION);
        double scale = 2000 / sheet.width();

        var top = sheet.projection().spot(rack.centre().with(org.shelterwright.catalog.space.Axis.Z, rack.z1()));
        // Away from the name in the middle of the top.
        int rgb = image.getRGB((int) (top.x() * scale), (int) (top.y() * scale) - 40) & 0xFFFFFF;

        assertThat(rgb).isEqualTo(Tint.STEEL.top().rgb());
        assertThat(image.getRGB(1500, 1200) & 0xFFFFFF)
                .isEqualTo(Role.VIEW.colour().rgb());
    }

    private PictureSheet sheet() {
        return new IsometricPicture(typeface)
                .of(scene, Situation.ON_STATION, Axonometry.FROM_REAR_RIGHT, new Caption("a", "b", "c"), List.of());
    }
}
