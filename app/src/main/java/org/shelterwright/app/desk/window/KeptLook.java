package org.shelterwright.app.desk.window;

import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.preferences.Preferences;
import org.shelterwright.app.desk.preferences.Preferences.WindowPlace;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.style.Theme;

/** Brings the look of the window back from the preferences, and keeps it there. */
final class KeptLook {
    private static final int LEFT = 284;
    private static final int RIGHT = 364;
    private static final double LEAST_WIDTH = 1024;
    private static final double LEAST_HEIGHT = 640;
    private static final double USUAL_WIDTH = 1600;
    private static final double USUAL_HEIGHT = 1000;

    private KeptLook() {}

    static void restore(Theme theme, PreferencesFile file) {
        Preferences kept = file.now();
        if (kept.ground() != null) {
            theme.ground().set(kept.ground());
        }
        if (kept.textPercent() != null) {
            theme.textPercent().set(kept.textPercent());
        }
        theme.onChange(() -> file.change(
                now -> now.withLook(theme.ground().get(), theme.textPercent().get())));
    }

    static void keepColumns(Columns columns, PreferencesFile file) {
        columns.leftWidth().set(or(file.now().leftWidth(), LEFT));
        columns.rightWidth().set(or(file.now().rightWidth(), RIGHT));
        Runnable keep = () -> file.change(now -> now.withColumns(
                (int) columns.leftWidth().get(), (int) columns.rightWidth().get()));
        columns.setOnMouseReleased(event -> keep.run());
        columns.sceneProperty().addListener((observable, before, now) -> {
            if (now == null) {
                keep.run();
            }
        });
    }

    static void restoreWindow(Stage stage, PreferencesFile file) {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setMinWidth(Math.min(LEAST_WIDTH, screen.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT, screen.getHeight()));
        WindowPlace place = file.now().window();
        boolean fits = place != null
                && !Screen.getScreensForRectangle(place.x(), place.y(), place.width(), place.height())
                        .isEmpty();
        if (place != null && fits) {
            stage.setX(place.x());
            stage.setY(place.y());
            size(stage, place.width(), place.height());
            stage.setMaximized(place.full());
        } else {
            // What a screen would hold to the pixel, its frame makes too large: then it is the frame's to fill the
            // screen.
            size(stage, Math.min(USUAL_WIDTH, screen.getWidth()), Math.min(USUAL_HEIGHT, screen.getHeight()));
            stage.setMaximized(fills(screen));
        }
    }

    /** Some window managers bring a new window to its least size: it is told its size again once it is there. */
    private static void size(Stage stage, double width, double height) {
        stage.setWidth(width);
        stage.setHeight(height);
        stage.addEventHandler(
                WindowEvent.WINDOW_SHOWN,
                event -> Platform.runLater(() -> {
                    if (!stage.isMaximized()) {
                        stage.setWidth(width);
                        stage.setHeight(height);
                    }
                }));
    }

    /** Whether a window that was never placed fills this screen, since it leaves little beside it. */
    static boolean fills(Rectangle2D screen) {
        return screen.getWidth() <= USUAL_WIDTH || screen.getHeight() <= USUAL_HEIGHT;
    }

    static void keepWindow(Stage stage, PreferencesFile file) {
        WindowPlace place = new WindowPlace(
                (int) stage.getX(),
                (int) stage.getY(),
                (int) stage.getWidth(),
                (int) stage.getHeight(),
                stage.isMaximized());
        file.change(now -> now.withWindow(place));
    }

    private static int or(@Nullable Integer kept, int usual) {
        return kept == null ? usual : kept;
    }
}
