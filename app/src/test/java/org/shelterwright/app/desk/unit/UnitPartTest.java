package org.shelterwright.app.desk.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.hand.HandPost;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.StyleSheet;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.look.Ground;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Placement;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@EnabledIfEnvironmentVariable(named = "DISPLAY", matches = ".+", disabledReason = "It needs a display")
@ExtendWith(ApplicationExtension.class)
class UnitPartTest {
    private Session session;
    private UnitPart part;
    private Scene scene;
    private final Theme theme = new Theme();

    @BeforeAll
    static void allowSpace() {
        System.setProperty("prism.forceGPU", "true");
    }

    @Start
    void start(Stage stage) {
        session = new Session(Checker.standard(), HandPost.layout());
        Commands commands = new Commands();
        part = new UnitPart(session, new Reach(commands, new KeyMap(commands, Map.of()), sentence -> {}));
        Fonts.load();
        scene = new Scene(part.node(), 284, 700);
        StyleSheet.dress(scene, theme);
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void a_typed_coordinate_moves_the_unit_as_one_named_step(FxRobot robot) {
        select(robot, "rack-1");

        type(robot, "#unit-x", "25.4");

        assertThat(placement("rack-1").station().pose().at()).isEqualTo(new Point(25_400, 100_000, 0));
        assertThat(session.now().history().undoNames()).containsExactly("Set x of Telemetry rack 1");
        type(robot, "#unit-y", "450+25");
        assertThat(placement("rack-1").station().pose().at().y()).isEqualTo(475_000);
        assertThat(robot.lookup("#unit-y").queryAs(TextField.class).getText()).isEqualTo("475");
    }

    @Test
    void what_is_wrong_stands_beside_the_field_and_nothing_moves(FxRobot robot) {
        select(robot, "rack-1");

        type(robot, "#unit-x", "12 parsec");

        assertThat(robot.lookup(
                                "\"12 parsec\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.")
                        .tryQuery())
                .isPresent();
        assertThat(robot.lookup("#unit-x").queryAs(TextField.class).getText()).isEqualTo("12 parsec");
        assertThat(session.now().history().canUndo()).isFalse();
        keep(robot, "unit-fault");

        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#unit-x").queryAs(TextField.class).getText()).isEqualTo("1050");
    }

    @Test
    void turns_pins_and_distances_are_set_by_hand(FxRobot robot) {
        select(robot, "rack-1");
        keep(robot, "unit-light");

        robot.clickOn("#unit-turn-270");
        assertThat(placement("rack-1").station().pose().yaw()).isEqualTo(QuarterTurn.R270);
        robot.clickOn("#edit-pin-y");
        assertThat(placement("rack-1").pin()).isEqualTo(new Pin(false, true, false, false));
        type(robot, "#unit-distance-2", "1 in");

        assertThat(placement("rack-1").station().pose().at().y()).isEqualTo(25_400);
        robot.interact(() -> theme.ground().set(Ground.DARK));
        keep(robot, "unit-dark");
    }

    @Test
    void inches_are_shown_and_typed_if_chosen(FxRobot robot) {
        select(robot, "chart-table");
        robot.interact(() -> part.lengthUnit().set(LengthUnit.INCH));

        type(robot, "#unit-x", "10");

        assertThat(placement("chart-table").station().pose().at().x()).isEqualTo(254_000);
        assertThat(robot.lookup("#unit-x").queryAs(TextField.class).getText()).isEqualTo("10");
    }

    @Test
    void several_units_show_what_they_share_and_take_a_figure_together(FxRobot robot) {
        select(robot, "rack-1", "battery-box", "heater");
        assertThat(robot.lookup("#unit-x").queryAs(TextField.class).getPromptText())
                .isEqualTo("differ");
        keep(robot, "unit-several");

        type(robot, "#unit-x", "1.2 m");

        assertThat(List.of("rack-1", "battery-box", "heater"))
                .allSatisfy(unit ->
                        assertThat(placement(unit).station().pose().at().x()).isEqualTo(1_200_000));
        assertThat(session.now().history().undoNames()).containsExactly("Set x of 3 units");
    }

    @Test
    void a_unit_can_be_mounted_elsewhere_from_a_list(FxRobot robot) {
        select(robot, "screen-1");

        @SuppressWarnings("unchecked")
        ChoiceBox<MountChoice> mount = robot.lookup("#unit-mount").queryAs(ChoiceBox.class);
        assertThat(mount.getValue()).hasToString("On Gauge locker, lower");
        robot.interact(() -> mount.setValue(mount.getItems().stream()
                .filter(one -> one.toString().equals("On Desk"))
                .findFirst()
                .orElseThrow()));

        assertThat(placement("screen-1").station().host()).isEqualTo("desk");
    }

    @Test
    void without_a_selection_it_says_what_to_do(FxRobot robot) {
        assertThat(robot.lookup("Select a unit to see and type its place.").tryQuery())
                .isPresent();
    }

    private void select(FxRobot robot, String... units) {
        robot.interact(() -> session.selection().set(List.of(units)));
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.interact(() -> {
            TextField found = robot.lookup(field).queryAs(TextField.class);
            found.requestFocus();
            found.selectAll();
        });
        robot.write(text).type(KeyCode.ENTER);
    }

    private void keep(FxRobot robot, String name) {
        robot.interact(() -> Snapshots.keep(scene, name));
    }

    private Placement placement(String unit) {
        return session.now().layout().placements().get(unit);
    }
}
