package org.shelterwright.app.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import javafx.geometry.Point3D;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.OnScreen;
import org.shelterwright.app.desk.space.Showing;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.samples.Samples;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith({OnScreen.class, ApplicationExtension.class})
class PlanPartTest {
    private final Commands commands = new Commands();
    private Session session;
    private PlanPart part;

    @Start
    void start(Stage stage) {
        Fonts.load();
        session = new Session(
                Checker.standard(),
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
        part = new PlanPart(
                session,
                new Showing(),
                new Reach(commands, new KeyMap(commands, Map.of()), sentence -> {}),
                new Theme());
        part.reduceMotion(true);
        stage.setScene(new Scene(part.node(), 1188, 760));
        stage.show();
    }

    @Test
    void a_unit_is_selected_and_dragged_in_the_plan(FxRobot robot) {
        Snapshots.keep(part.node().getScene(), "plan");
        Box before = outline();
        Point3D middle = new Point3D(before.centre().x() / 1e3, before.centre().y() / 1e3, before.z1() / 1e3);
        var seen = part.viewpoint().now().project(middle);

        robot.moveTo(part.node().localToScreen(seen.x(), seen.y()))
                .press(MouseButton.PRIMARY)
                .moveBy(0, -10)
                .moveBy(0, -30);
        Snapshots.keep(part.node().getScene(), "plan-drag");
        robot.release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(session.selection().leader()).contains("rack-1");
        assertThat(outline().y0()).isGreaterThan(before.y0());
        assertThat(session.now().history().canUndo()).isTrue();
    }

    private Box outline() {
        return session.now().scene().unit("rack-1").orElseThrow().outline(Situation.ON_STATION);
    }
}
