package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.space.SpacePane;
import org.testfx.util.WaitForAsyncUtils;

/** Text at 200 % in a window of 1366 by 768: everything can be read, and reached by key. */
class DeskLargeTextTest extends WindowTest {
    @TempDir
    Path folder;

    private Desks.Desk desk;

    @BeforeEach
    void open() {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        onDesk(() -> {
            stage().setX(0);
            stage().setY(0);
            stage().setWidth(1366);
            stage().setHeight(768);
            desk.window().theme().textPercent().set(200);
            stage().toFront();
            stage().requestFocus();
            return null;
        });
        await("every limit is answered", () -> desk.window().session().now().settled());
    }

    @AfterEach
    void close() {
        onDesk(() -> {
            stage().hide();
            return null;
        });
    }

    @Test
    void noOrderOfAnyPageIsCutOff() {
        assertThat(cutOff()).as("fit-out").isEmpty();
        onDesk(() -> {
            desk.window().session().selection().only("rack-1");
            return null;
        });
        run("inside.open");
        assertThat(cutOff()).as("inside").isEmpty();
        run("inside.close");
        run("desk.page-3");
        await("the steps are there", () -> free("bolt.next"));
        assertThat(cutOff()).as("bolt-down").isEmpty();
        run("desk.page-2");
        assertThat(cutOff()).as("transport without a journey").isEmpty();
        run("journey.sample");
        await("it is open", () -> desk.window().journey().session().now().isPresent());
        assertThat(cutOff()).as("transport").isEmpty();
    }

    @Test
    void theLedgerBelowTheEquipmentComesIntoSightWhenItTakesTheFocus() {
        assertThat(inSight("#ledger-list")).isFalse();

        robot.press(KeyCode.CONTROL).type(KeyCode.L).release(KeyCode.CONTROL);

        await(
                "the ledger has the focus",
                () -> stage().getScene().lookup("#ledger-list").isFocused());
        await("it is in sight", () -> inSight("#ledger-list"));
    }

    @Test
    void turningToAPageBringsTheFocusToItsView() {
        onDesk(() -> {
            stage().getScene().lookup("#equipment-list").requestFocus();
            return null;
        });

        run("desk.page-3");

        await(
                "the view has the focus",
                () -> Optional.ofNullable(stage().getScene().getFocusOwner())
                        .filter(node -> node.getStyleClass().contains(SpacePane.VIEW))
                        .filter(node -> "bolt-space".equals(node.getId()))
                        .isPresent());
    }

    @Test
    void theWiresBelowTheViewStayInsideTheWindow() {
        run("view.wires");

        Node wires = onDesk(() -> stage().getScene().lookup("#wires"));
        await(
                "they are there",
                () -> wires.getScene() != null && wires.getLayoutBounds().getWidth() > 0);
        assertThat(onDesk(() -> desk.window().middle().node().getWidth())).isLessThanOrEqualTo(1366.0 / 2 + 1);
    }

    @Test
    void leavingTheInsideBringsTheFocusBackToTheView() {
        onDesk(() -> {
            desk.window().session().selection().only("rack-1");
            return null;
        });
        run("inside.open");

        robot.type(KeyCode.ESCAPE);

        await(
                "the view has the focus",
                () -> Optional.ofNullable(stage().getScene().getFocusOwner())
                        .filter(node -> node.getStyleClass().contains(SpacePane.VIEW))
                        .isPresent());
    }

    /** Orders that are shown narrower than their words. */
    private List<String> cutOff() {
        WaitForAsyncUtils.waitForFxEvents();
        return onDesk(() -> stage().getScene().getRoot().lookupAll(".button, .toggle-button").stream()
                .filter(DeskLargeTextTest::shown)
                .filter(ButtonBase.class::isInstance)
                .map(ButtonBase.class::cast)
                .filter(button -> button.getText() != null && !button.getText().isEmpty())
                .filter(button -> button.getWidth() + 1 < button.prefWidth(-1))
                .map(ButtonBase::getText)
                .toList());
    }

    private static boolean shown(Node node) {
        for (Node one = node; one != null; one = one.getParent()) {
            if (!one.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private boolean inSight(String id) {
        Node node = stage().getScene().lookup(id);
        for (Node one = node.getParent(); one != null; one = one.getParent()) {
            if (one instanceof ScrollPane pane) {
                Bounds room = pane.localToScene(pane.getLayoutBounds());
                Bounds place = node.localToScene(node.getLayoutBounds());
                return place.getMinY() + 40 < room.getMaxY() && place.getMaxY() > room.getMinY();
            }
        }
        return false;
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

    private void run(String command) {
        assertThat(onDesk(() -> desk.window().commands().run(command)))
                .as(command)
                .isEmpty();
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
