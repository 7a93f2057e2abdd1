package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.look.Ground;

/** The bolt-down page in a real window: step by step, played, an order found. */
class DeskBoltTest extends WindowTest {
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
            return desk.window().commands().run("desk.page-3");
        });
        await("the window has the focus", () -> stage().isFocused());
    }

    @AfterEach
    void close() {
        onDesk(() -> {
            stage().hide();
            return null;
        });
    }

    @Test
    void theStepsOfTheSampleAreGoneThroughByKeyAndByScrubber() {
        int units =
                onDesk(() -> desk.window().session().now().layout().placements().size());
        await("the steps are there", () -> steps().getItems().size() == units);

        for (int i = 0; i < 7; i++) {
            robot.press(KeyCode.CONTROL).type(KeyCode.PAGE_DOWN).release(KeyCode.CONTROL);
        }
        await("it is step 7", () -> texts("#step-card .title").stream().anyMatch(text -> text.startsWith("Step 7, ")));
        assertThat(onDesk(() -> scrubber().getValue())).isEqualTo(7);
        assertThat(onDesk(() -> steps().getSelectionModel().getSelectedIndex())).isEqualTo(6);
        picture(stage().getScene(), "bolt-7");

        onDesk(() -> {
            scrubber().setValue(9.5);
            return null;
        });
        await(
                "it is on its way",
                () -> texts("#step-card .title").stream().anyMatch(text -> text.startsWith("Step 10, ")));
        picture(stage().getScene(), "bolt-way-in");
        onDesk(() -> {
            desk.window().theme().ground().set(Ground.DARK);
            scrubber().setValue(units);
            return null;
        });
        picture(stage().getScene(), "bolt-full-dark");
        assertThat(onDesk(() -> desk.window().commands().run("bolt.later"))).contains("It is the last step already.");
    }

    @Test
    void everythingIsShownComingInUntilItIsStopped() {
        await("the steps are there", () -> !steps().getItems().isEmpty());

        onDesk(() -> desk.window().commands().run("bolt.play"));
        await("it moves", () -> scrubber().getValue() > 1.2);
        onDesk(() -> desk.window().commands().run("bolt.play"));
        double at = onDesk(() -> scrubber().getValue());
        onDesk(() -> desk.window().commands().run("bolt.previous"));

        assertThat(onDesk(() -> scrubber().getValue())).isEqualTo(Math.ceil(at) - 1);
    }

    private Slider scrubber() {
        return (Slider) stage().getScene().lookup("#bolt-scrubber");
    }

    private ListView<?> steps() {
        return (ListView<?>) stage().getScene().lookup("#step-list");
    }

    private List<String> texts(String selector) {
        return stage().getScene().getRoot().lookupAll(selector).stream()
                .filter(Labeled.class::isInstance)
                .map(node -> ((Labeled) node).getText())
                .toList();
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
