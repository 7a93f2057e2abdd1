package org.shelterwright.app.desk.space;

import java.util.Arrays;
import javafx.geometry.Point3D;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.samples.Samples;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Measures how long a drag step keeps the window's thread busy. Not a test: run it by name, with {@code -Dtest=DragStepRun}. */
@ExtendWith({OnScreen.class, ApplicationExtension.class})
class DragStepRun {
    private static final int WARM = 300;
    private static final int STEPS = 300;

    private Session session;
    private SpacePart part;

    @Start
    void start(Stage stage) {
        Fonts.load();
        session = new Session(
                Checker.standard(),
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
        part = new SpacePart(session, new Commands(), new Theme());
        part.reduceMotion(true);
        stage.setScene(new Scene(part.node(), 1188, 790));
        stage.show();
    }

    @Test
    void measures_drag_steps() {
        WaitForAsyncUtils.waitForFxEvents();
        double[] eventMs = new double[STEPS];
        double[] drawMs = new double[STEPS];
        double[] ledgerMs = new double[STEPS];
        var outline = session.now().scene().unit("rack-2").orElseThrow().outline(Situation.ON_STATION);
        var seen = part.viewpoint()
                .now()
                .project(
                        new Point3D(outline.centre().x() / 1e3, outline.centre().y() / 1e3, outline.z1() / 1e3));
        fx(() -> fire(MouseEvent.MOUSE_PRESSED, seen.x(), seen.y()));
        for (int i = 0; i < WARM + STEPS; i++) {
            double x = seen.x() - 60 * (1 - Math.cos(i / 20.0));
            double y = seen.y() + 40 * Math.sin(i / 17.0);
            int at = i - WARM;
            fx(() -> {
                long begun = System.nanoTime();
                fire(MouseEvent.MOUSE_DRAGGED, x, y);
                long moved = System.nanoTime();
                part.node().layout();
                long drawn = System.nanoTime();
                session.tryOut(session.now().layout());
                long ledger = System.nanoTime();
                if (at >= 0) {
                    eventMs[at] = (moved - begun) / 1e6;
                    drawMs[at] = (drawn - moved) / 1e6;
                    ledgerMs[at] = (ledger - drawn) / 1e6;
                }
            });
        }
        fx(() -> fire(MouseEvent.MOUSE_RELEASED, seen.x(), seen.y()));
        double[] sum = new double[STEPS];
        Arrays.setAll(sum, i -> eventMs[i] + drawMs[i]);
        report("move: snap, ledger, scene", eventMs);
        report("draw what lies over it", drawMs);
        report("both", sum);
        report("(a try-out without a change)", ledgerMs);
    }

    private static void report(String what, double[] ms) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        System.out.printf(
                "%-32s median %.2f ms, 95 %% %.2f ms, most %.2f ms%n",
                what, sorted[STEPS / 2], sorted[STEPS * 95 / 100], sorted[STEPS - 1]);
    }

    private void fire(javafx.event.EventType<MouseEvent> type, double x, double y) {
        boolean down = type != MouseEvent.MOUSE_RELEASED;
        part.node()
                .fireEvent(new MouseEvent(
                        type,
                        x,
                        y,
                        x,
                        y,
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        down,
                        false,
                        false,
                        true,
                        false,
                        false,
                        null));
    }

    private static void fx(Runnable action) {
        WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
            action.run();
            return null;
        });
    }
}
