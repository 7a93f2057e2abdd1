package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.WindowTest;

/** Wires in the window: found in the list, shown in the view, added by picking, routed. */
class DeskWiresTest extends WindowTest {
    @TempDir
    Path folder;

    private Desks.Desk desk;

    @BeforeEach
    void open() {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        onDesk(() -> {
            desk.window().stage().setWidth(1920);
            desk.window().stage().setHeight(1080);
            return desk.window().commands().run("view.wires");
        });
    }

    @AfterEach
    void close() {
        onDesk(() -> {
            desk.window().stage().hide();
            return null;
        });
    }

    @Test
    void aWireIsFoundShownAddedByPickingAndRouted() {
        await("the wires are there", () -> find("#wires") != null);
        TableView<?> wires = find("#wires");
        int all = onDesk(() -> wires.getItems().size());
        onDesk(() -> {
            this.<TextField>find("#wire-filter").setText("heater");
            return null;
        });
        assertThat(onDesk(() -> wires.getItems().size())).isPositive().isLessThan(all);
        onDesk(() -> {
            this.<TextField>find("#wire-filter").clear();
            wires.getSelectionModel().select(0);
            wires.getSelectionModel().select(3);
            return null;
        });
        assertThat(onDesk(() -> desk.window().session().selection().wires().get()))
                .isNotEmpty();
        Snapshots.keep(desk.window().stage().getScene(), "wires-chosen");

        onDesk(() -> {
            this.<ToggleButton>find("#wire-pick").fire();
            desk.window().session().selection().only("power-unit");
            desk.window().session().selection().only("rack-1");
            this.<ComboBox<String>>find("#wire-from").getEditor().setText("power-unit/mains out");
            this.<ComboBox<String>>find("#wire-to").getEditor().setText("rack-1/power");
            this.<ComboBox<String>>find("#wire-cable").getEditor().setText("supply-3x1.5");
            this.<Button>find("#wire-add").fire();
            return null;
        });
        await(
                "the new wire is routed",
                () -> this.<Labeled>find("#wire-told").getText().equals("1 wire was routed."));
        assertThat(onDesk(() -> wires.getItems().size())).isEqualTo(all + 1);
        Set<String> chosen =
                onDesk(() -> desk.window().session().selection().wires().get());
        assertThat(chosen).hasSize(1);
        assertThat(onDesk(() -> desk.window().session().now().layout().routes()))
                .containsKey(chosen.iterator().next());
        Snapshots.keep(desk.window().stage().getScene(), "wires-added");
    }

    @SuppressWarnings("unchecked")
    private <T> T find(String id) {
        return (T) desk.window().stage().getScene().lookup(id);
    }
}
