package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.hand.HandPost;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

/** Items in a form: changed, made one's own, made new, and refused. */
class DeskItemTest extends WindowTest {
    @TempDir
    Path folder;

    private final Layout start = HandPost.layout();
    private Desks.Desk desk;

    @BeforeEach
    void open() {
        Path file = folder.resolve("post.layout.json");
        LayoutFiles.write(start, file, Fingerprint.NONE);
        desk = onDesk(() -> Desks.open(file.toString(), folder.resolve("user"), new ScriptedQuestions()));
        onDesk(() -> {
            stage().toFront();
            stage().requestFocus();
            return null;
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
    void anItemIsChangedForAllItsUnitsAsOneStepAndABadFigureChangesNothing() {
        select("rack-2");
        robot.press(KeyCode.CONTROL).type(KeyCode.E).release(KeyCode.CONTROL);
        await("the form is open", () -> stage().getScene().lookup("#item-form") != null);
        assertThat(text("item-depth")).isEqualTo("700");
        assertThat(onDesk(() -> button("item-change").isDisabled()))
                .as("nothing to change yet")
                .isTrue();

        type("item-mass", "heavy");
        assertThat(texts("#item-form .label"))
                .contains("\"heavy\" is no mass. Type kilograms, such as 48.5, or nothing if it is not known.")
                .contains("One thing is wrong. It stands beside its field.");
        assertThat(onDesk(() -> button("item-change").isDisabled())).isTrue();
        picture(stage().getScene(), "item-fault");
        robot.type(KeyCode.ESCAPE);
        assertThat(text("item-mass")).as("Esc brings back what was right").isNotEqualTo("heavy");

        type("item-depth", "750");
        await("it can be changed", () -> !button("item-change").isDisabled());
        picture(stage().getScene(), "item-form");
        robot.clickOn("#item-change");

        await("it is changed", () -> layout().parts().item("rack-19-34u").size().equals(Size.ofMm(750, 600, 1650)));
        assertThat(onDesk(() -> stage().getScene().lookup("#item-form"))).isNull();
        assertThat(onDesk(() -> desk.window().session().now().history().undoNames()))
                .containsExactly("Change item Rack 19 in, 34 U, front service");
        onDesk(() -> desk.window().commands().run("edit.undo"));
        assertThat(onDesk(this::layout)).isEqualTo(start);
    }

    @Test
    void escLeavesEverythingAsItWas() {
        select("rack-2");
        onDesk(() -> desk.window().commands().run("list.edit-item"));
        await("the name is typed in", () -> field("item-name").isFocused());
        robot.type(KeyCode.ESCAPE);

        await("the form is gone", () -> stage().getScene().lookup("#item-form") == null);
        assertThat(onDesk(this::layout)).isEqualTo(start);
    }

    @Test
    void oneUnitCanGetAnItemOfItsOwn() {
        select("rack-2");
        onDesk(() -> desk.window().commands().run("list.edit-item"));
        type("item-name", "Rack of ours");
        robot.clickOn("#item-change-only");

        await("it has its own", () -> item("rack-2").id().equals("rack-of-ours"));
        assertThat(onDesk(() -> item("rack-1"))).isEqualTo(start.parts().item("rack-19-34u"));
    }

    @Test
    void aNewItemIsAddedToTheEquipmentAndPlaced() {
        onDesk(() -> desk.window().commands().run("list.new-item"));
        await("the form is open", () -> stage().getScene().lookup("#item-form") != null);
        type("item-name", "Rope chest");
        type("item-height", "450");
        type("item-mass", "32");
        robot.clickOn("#item-add");

        await(
                "it is there",
                () -> layout().brief().units().stream()
                        .anyMatch(unit -> unit.id().equals("rope-chest")));
        assertThat(onDesk(() -> item("rope-chest").mass().massKg())).isEqualTo(32);
        assertThat(onDesk(() -> desk.window().session().selection().holds("rope-chest")))
                .isTrue();
        onDesk(() -> desk.window().commands().run("edit.undo"));
        assertThat(onDesk(this::layout)).isEqualTo(start);
    }

    @Test
    void tabGoesRoundWithinTheForm() {
        onDesk(() -> desk.window().commands().run("list.new-item"));
        await("the name is typed in", () -> field("item-name").isFocused());

        for (int i = 0; i < 60; i++) {
            robot.type(KeyCode.TAB);
            assertThat(onDesk(this::focusInForm))
                    .as("after %s times Tab", i + 1)
                    .isTrue();
        }
        robot.press(KeyCode.SHIFT);
        for (int i = 0; i < 40; i++) {
            robot.type(KeyCode.TAB);
        }
        robot.release(KeyCode.SHIFT);
        assertThat(onDesk(this::focusInForm)).isTrue();
    }

    private boolean focusInForm() {
        Node form = stage().getScene().lookup("#item-form");
        for (Node node = stage().getScene().getFocusOwner(); node != null; node = node.getParent()) {
            if (node == form) {
                return true;
            }
        }
        return false;
    }

    private void select(String unit) {
        onDesk(() -> {
            desk.window().session().selection().only(unit);
            return null;
        });
    }

    private void type(String field, String words) {
        onDesk(() -> {
            field(field).requestFocus();
            field(field).selectAll();
            return null;
        });
        robot.write(words).type(KeyCode.ENTER);
    }

    private String text(String field) {
        return onDesk(() -> field(field).getText());
    }

    private TextField field(String id) {
        return (TextField) stage().getScene().lookup("#" + id);
    }

    private Button button(String id) {
        return (Button) stage().getScene().lookup("#" + id);
    }

    private Item item(String unit) {
        UnitSpec spec = layout().brief().units().stream()
                .filter(one -> one.id().equals(unit))
                .findFirst()
                .orElseThrow();
        return layout().item(spec);
    }

    private Layout layout() {
        return desk.window().session().now().layout();
    }

    private List<String> texts(String selector) {
        return onDesk(() -> stage().getScene().getRoot().lookupAll(selector).stream()
                .filter(Labeled.class::isInstance)
                .map(node -> ((Labeled) node).getText())
                .toList());
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
