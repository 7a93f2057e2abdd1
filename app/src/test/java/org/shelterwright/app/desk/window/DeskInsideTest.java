package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.testfx.util.WaitForAsyncUtils;

/** A rack and a stowage place are opened from the view and arranged by hand. */
class DeskInsideTest extends WindowTest {
    private static final String RACK = "rack-1";

    /** Distance of the front from the edges of its pane (px). */
    private static final double MARGIN = 28;

    @TempDir
    Path folder;

    private Desks.Desk desk;

    @BeforeEach
    void open() {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        onDesk(() -> {
            stage().setX(0);
            stage().setY(0);
            stage().setWidth(1600);
            stage().setHeight(1000);
            stage().toFront();
            stage().requestFocus();
            return null;
        });
        await("the window has the focus", () -> stage().isFocused());
        WaitForAsyncUtils.waitForFxEvents();
    }

    @AfterEach
    void close() {
        robot.release(MouseButton.PRIMARY);
        onDesk(() -> {
            stage().hide();
            return null;
        });
    }

    @Test
    void aPieceIsDraggedInARackAndTheLedgerAnswersUntilItIsUndone() {
        openRack();
        picture(stage().getScene(), "inside-rack");
        int before = lowest("patch-1");
        assertThat(broken()).isEmpty();

        robot.drag(at(lowest("patch-1")), MouseButton.PRIMARY).moveTo(at(lowest("server-1")));
        robot.moveBy(1, 0);
        await("a row breaks", () -> !broken().isEmpty());
        picture(stage().getScene(), "inside-held");
        assertThat(onDesk(() -> session().now().tryingOut())).isTrue();
        robot.drop();
        await("it is kept", () -> !session().now().tryingOut());
        assertThat(undoNames()).containsExactly("Drag " + name("patch-1"));

        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        await("it is undone", () -> lowest("patch-1") == before);
        await("the ledger is whole again", () -> session().now().settled());
        assertThat(broken()).isEmpty();
    }

    @Test
    void aPieceDraggedOntoOneAsHighSwapsWithItAndIsKeptByKey() {
        openRack();
        int one = lowest("switch-1");
        int other = lowest("router");

        robot.drag(at(one), MouseButton.PRIMARY).moveTo(at(other));
        robot.moveBy(1, 0).drop();
        await("they have changed places", () -> lowest("switch-1") == other && lowest("router") == one);

        await("the drag is over", () -> !session().now().tryingOut());
        robot.type(KeyCode.K);
        await("it is kept", () -> place("switch-1").kept());
        robot.type(KeyCode.ESCAPE);
        await("the view is back", () -> !inside().isVisible());
        assertThat(undoNames()).containsExactly("Keep " + name("switch-1"), "Drag " + name("switch-1"));
    }

    @Test
    void aPieceIsFoundByNameTakenOutAndPutInAgain() {
        Point2D eye = onDesk(() -> desk.window().middle().space().orElseThrow().onScreen(Point.ORIGIN));
        robot.press(KeyCode.CONTROL).type(KeyCode.I).release(KeyCode.CONTROL);
        await("the pieces are listed", () -> look("#find-piece") != null);
        robot.write("wading");
        picture(stage().getScene(), "find-piece");
        robot.type(KeyCode.ENTER);
        await("its place is open", () -> inside().isVisible());
        String piece = onDesk(() -> session().now().layout().brief().listed().pieces().stream()
                .filter(one -> one.name().toLowerCase(Locale.ROOT).contains("wading"))
                .findFirst()
                .orElseThrow()
                .id());
        assertThat(onDesk(() -> session().selection().holds(place(piece).unit())))
                .isTrue();
        await(
                "the view goes there",
                () -> !desk.window()
                        .middle()
                        .space()
                        .orElseThrow()
                        .onScreen(Point.ORIGIN)
                        .equals(eye));
        picture(stage().getScene(), "inside-place");

        robot.clickOn("#inside-take-out");
        await("it has no place", () -> place(piece) == null);
        assertThat(onDesk(() -> list("#inside-to-place").getItems())).hasSize(1);
        await(
                "the ledger says so",
                () -> broken().stream().anyMatch(row -> row.subject() == Subject.STOWAGE)
                        || session().now().ledger().rows().stream()
                                .anyMatch(row -> row.subject() == Subject.STOWAGE && row.verdict() != Verdict.MET));
        picture(stage().getScene(), "inside-without");
        onDesk(() -> {
            list("#inside-to-place").getSelectionModel().selectFirst();
            return null;
        });
        robot.clickOn("#inside-put-in");
        await("it is in again", () -> place(piece) != null);
        assertThat(onDesk(() -> list("#inside-to-place").getItems())).isEmpty();
        await("the ledger is whole", () -> session().now().settled());
        assertThat(onDesk(() -> session().now().ledger()))
                .isEqualTo(session().checker().check(session().now().layout()));
    }

    private void openRack() {
        robot.clickOn(top(RACK));
        await("it is selected", () -> session().selection().holds(RACK));
        robot.type(KeyCode.E);
        await("its inside is open", () -> inside().isVisible());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private List<Row> broken() {
        return session().now().ledger().rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN
                        && (row.subject() == Subject.RACKS || row.subject() == Subject.STOWAGE))
                .toList();
    }

    private PiecePlace place(String piece) {
        return session().now().layout().contents().places().get(piece);
    }

    private int lowest(String piece) {
        return place(piece).lowest();
    }

    private String name(String piece) {
        return session()
                .now()
                .layout()
                .brief()
                .listed()
                .piece(piece)
                .orElseThrow()
                .name();
    }

    private List<String> undoNames() {
        return onDesk(() -> session().now().history().undoNames());
    }

    /** The middle of a height unit on the screen. */
    private Point2D at(int unit) {
        return onDesk(() -> {
            Node sketch = look("#inside-sketch");
            double width = sketch.getLayoutBounds().getWidth();
            double height = sketch.getLayoutBounds().getHeight();
            int units = session()
                    .now()
                    .scene()
                    .unit(RACK)
                    .orElseThrow()
                    .item()
                    .bays()
                    .get(0)
                    .units();
            double one = (height - 2 * MARGIN) / units;
            return sketch.localToScreen(width / 2, height - MARGIN - (unit - 0.5) * one);
        });
    }

    private Point2D top(String unit) {
        return onDesk(() -> {
            Box outline = session().now().scene().unit(unit).orElseThrow().outline(Situation.ON_STATION);
            Point top = new Point(outline.centre().x(), outline.centre().y(), outline.z1());
            return desk.window().middle().space().orElseThrow().onScreen(top);
        });
    }

    private Node inside() {
        return look("#inside");
    }

    private Node look(String id) {
        return stage().getScene().lookup(id);
    }

    @SuppressWarnings("unchecked")
    private ListView<Object> list(String id) {
        return (ListView<Object>) look(id);
    }

    private Session session() {
        return desk.window().session();
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
