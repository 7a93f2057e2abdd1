package org.shelterwright.app.desk.twin;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.OnScreen;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.samples.Samples;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith({OnScreen.class, ApplicationExtension.class})
class TwinPartTest {
    private Session session;
    private TwinPart part;

    @Start
    void start(Stage stage) {
        Fonts.load();
        session = new Session(
                Checker.standard(),
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
        part = new TwinPart(session, new Theme());
        stage.setScene(new Scene(part.node(), 1188, 600));
        stage.show();
    }

    @Test
    void the_selection_is_shared_both_ways(FxRobot robot) {
        TableView<?> table = (TableView<?>) part.node();
        robot.interact(() -> session.selection().only("rack-2"));
        assertThat(table.getSelectionModel().getSelectedItems()).hasSize(1);
        assertThat(((TwinRow) table.getSelectionModel().getSelectedItem()).unit())
                .isEqualTo("rack-2");

        robot.interact(table::requestFocus);
        robot.interact(
                () -> table.getFocusModel().focus(table.getSelectionModel().getSelectedIndex()));
        robot.type(KeyCode.DOWN);
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(session.selection().units().get()).hasSize(1).doesNotContain("rack-2");
        Snapshots.keep(part.node().getScene(), "twin");
    }

    @Test
    void a_row_says_itself_in_a_sentence() {
        TwinRow row = TwinRow.of(session.now(), session.situation().get()).stream()
                .filter(one -> one.unit().equals("rack-2"))
                .findFirst()
                .orElseThrow();

        assertThat(row.sentence())
                .startsWith("Telemetry rack 2, ")
                .contains(", floor, x ")
                .contains(" mm, turned ")
                .endsWith(".");
    }
}
