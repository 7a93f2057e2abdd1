package org.shelterwright.app.desk;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.testfx.util.WaitForAsyncUtils;

/** Pictures of windows, for people to look at. */
public final class Snapshots {
    private static final int PATIENCE_MS = 20_000;

    private Snapshots() {}

    /** Keeps what a scene shows as {@code target/desk/NAME.png}; from any thread. */
    public static Path keep(Scene scene, String name) {
        return write(of(scene), Path.of("target", "desk", name + ".png"));
    }

    /** What a scene shows, as it is drawn now; from any thread. */
    public static BufferedImage of(Scene scene) {
        if (Platform.isFxApplicationThread()) {
            return drawn(scene);
        }
        WaitForAsyncUtils.waitForFxEvents();
        return WaitForAsyncUtils.waitForAsyncFx(PATIENCE_MS, () -> drawn(scene));
    }

    /** Writes a picture as PNG; makes the folder if there is none. */
    public static Path write(BufferedImage picture, Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(picture, "png", file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage drawn(Scene scene) {
        WritableImage shot = scene.snapshot(null);
        int width = (int) shot.getWidth();
        int height = (int) shot.getHeight();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        PixelReader pixels = shot.getPixelReader();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        return copy;
    }
}
