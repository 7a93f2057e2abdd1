package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.desk.FewColours;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.look.Ground;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Pictures of every page and state, to be looked at in {@code target/desk}. With {@code -Ddesk.pictures.write=true} those of
 * the guide are written too.
 */
class DeskPicturesTest extends WindowTest {
    private static final Path GUIDE = Path.of("..", "docs", "pictures");

    /** Largest file of the guide (bytes): pictures are read over slow lines too. */
    private static final long MOST = 220_000;

    @TempDir
    Path folder;

    private Desks.Desk desk;
    private String look = "";

    @AfterEach
    void close() {
        robot.release(MouseButton.PRIMARY);
        onDesk(() -> {
            stage().hide();
            return null;
        });
    }

    @ParameterizedTest
    @CsvSource({
        "1366, 768, LIGHT, 100",
        "1366, 768, DARK, 100",
        "1920, 1080, LIGHT, 100",
        "1920, 1080, DARK, 100",
        "1366, 768, LIGHT, 200"
    })
    void everyPageAndStateIsDrawnInEachLook(int width, int height, Ground ground, int text) {
        open(width, height, ground, text);
        run("ledger.worst-finding");
        keep("fit-out");
        run("desk.page-3");
        await("the steps are there", () -> free("bolt.next"));
        for (int i = 0; i < 7; i++) {
            run("bolt.next");
        }
        keep("bolt-down");
        run("desk.page-1");
        run("desk.keys");
        keep("keys");
        escape();
        run("desk.first-steps");
        keep("first-steps");
        escape();
        run("desk.find-command");
        robot.write("mou");
        keep("find-command");
        escape();
        states();
    }

    private void states() {
        select("rack-1");
        run("inside.open");
        keep("inside-rack");
        run("inside.close");
        select("gauge-locker");
        run("inside.open");
        keep("inside-place");
        run("inside.close");
        select("rack-2");
        run("view.overlay-centre-of-mass");
        run("view.overlay-floor-load");
        keep("overlays");
        run("view.overlay-centre-of-mass");
        run("view.overlay-floor-load");
        run("list.edit-item");
        keep("item");
        escape();
        run("view.both");
        run("view.table");
        keep("plan-and-table");
        run("view.table");
        run("view.space");
        wires();
        held();
        placed();
        run("desk.history");
        keep("history");
        escape();
        searched();
    }

    private void wires() {
        run("view.wires");
        onDesk(() -> {
            desk.window().session().selection().clear();
            desk.window().session().selection().wires(Set.of("w1", "w4"));
            return null;
        });
        keep("wires");
        onDesk(() -> {
            desk.window().session().selection().wires(Set.of());
            return null;
        });
        run("view.wires");
        select("rack-2");
    }

    /** Of the pages the guide has every look and size; of other states one light and one dark. */
    private boolean inGuide(String state) {
        return List.of("fit-out", "bolt-down").contains(state)
                ? !look.endsWith("-200")
                : List.of("light-1366x768", "dark-1920x1080").contains(look);
    }

    private void held() {
        awaitRest("the view is at rest", () -> seen("rack-2", 0, 0));
        robot.moveTo(seen("rack-2", 0, 0)).press(MouseButton.PRIMARY);
        robot.moveTo(seen("rack-2", -30, -30)).moveTo(seen("rack-2", -200, -250));
        await("it is held", () -> desk.window().session().now().tryingOut());
        keep("held");
        robot.type(KeyCode.ESCAPE).release(MouseButton.PRIMARY);
    }

    private void placed() {
        onDesk(() -> {
            desk.window().session().apply(new TakeOutUnit("rack-2"));
            desk.window().session().selection().only("rack-2");
            return null;
        });
        run("edit.why-not-here");
        keep("why-not-here");
        escape();
        run("list.catalog");
        keep("catalog");
        onDesk(() -> desk.window().commands().run("list.filter"));
    }

    private void searched() {
        run("search.start");
        await("the search can be stopped", () -> free("search.stop"));
        await("it is on its way", () -> !moves().equals("–") || !free("search.stop"));
        keep("searching");
        if (onDesk(() -> free("search.stop"))) {
            run("search.stop");
        }
        await("a layout is offered", () -> free("search.take-a"));
        keep("searched");
    }

    private String moves() {
        return ((Labeled) stage().getScene().lookup("#search-moves")).getText();
    }

    private boolean free(String command) {
        return desk.window()
                .commands()
                .byId(command)
                .orElseThrow()
                .obstacle()
                .get()
                .isEmpty();
    }

    private void open(int width, int height, Ground ground, int text) {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        onDesk(() -> {
            stage().setX(0);
            stage().setY(0);
            stage().setWidth(width);
            stage().setHeight(height);
            desk.window().theme().ground().set(ground);
            desk.window().theme().textPercent().set(text);
            stage().toFront();
            stage().requestFocus();
            return null;
        });
        await("every limit is answered", () -> desk.window().session().now().settled());
        look = ground.name().toLowerCase(Locale.ROOT) + "-" + width + "x" + height + (text == 100 ? "" : "-" + text);
    }

    private void run(String command) {
        assertThat(onDesk(() -> desk.window().commands().run(command)))
                .as(command)
                .isEmpty();
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void select(String unit) {
        onDesk(() -> {
            desk.window().session().selection().only(unit);
            return null;
        });
    }

    private void escape() {
        onDesk(() -> {
            Scene scene = stage().getScene();
            KeyEvent escape = new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ESCAPE, false, false, false, false);
            (scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner()).fireEvent(escape);
            return null;
        });
    }

    /** A place beside the top of a unit, on the screen; the way in mm. */
    private Point2D seen(String unit, int x, int y) {
        return onDesk(() -> {
            Box outline = desk.window()
                    .session()
                    .now()
                    .scene()
                    .unit(unit)
                    .orElseThrow()
                    .outline(Situation.ON_STATION);
            Point top =
                    new Point(outline.centre().x() + x * 1000, outline.centre().y() + y * 1000, outline.z1());
            return desk.window().middle().space().orElseThrow().onScreen(top);
        });
    }

    private void keep(String state) {
        BufferedImage picture = Snapshots.of(stage().getScene());
        Path file = Snapshots.write(picture, Path.of("target", "desk", state + "-" + look + ".png"));
        assertThat(file).isNotEmptyFile();
        if (Boolean.getBoolean("desk.pictures.write") && inGuide(state)) {
            Path written = FewColours.write(picture, GUIDE.resolve("window-" + state + "-" + look + ".png"));
            assertThat(size(written)).as("bytes of " + written).isLessThan(MOST);
        }
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
