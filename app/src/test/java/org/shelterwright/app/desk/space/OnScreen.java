package org.shelterwright.app.desk.space;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.testfx.util.WaitForAsyncUtils;

/** Lets tests run only where there is a display, with 3D, and saves what is seen. */
public final class OnScreen implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        String display = System.getenv("DISPLAY");
        if (display == null || display.isEmpty()) {
            return ConditionEvaluationResult.disabled("There is no display: run under xvfb-run.");
        }
        System.setProperty("prism.forceGPU", "true");
        return ConditionEvaluationResult.enabled("There is a display.");
    }

    /** Saves a picture of a node as it is drawn now. */
    public static void save(Node node, Path file) {
        WaitForAsyncUtils.waitForFxEvents();
        WritableImage image =
                WaitForAsyncUtils.waitForAsyncFx(20_000, () -> node.getScene().snapshot(null));
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.setRGB(x, y, image.getPixelReader().getArgb(x, y));
            }
        }
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
