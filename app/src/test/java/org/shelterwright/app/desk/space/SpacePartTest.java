package org.shelterwright.app.desk.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.look.Ground;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith({OnScreen.class, ApplicationExtension.class})
class SpacePartTest {
    private final Commands commands = new Commands();
    private final Theme theme = new Theme();
    private Session session;
    private SpacePart part;

    @Start
    void start(Stage stage) {
        session = new Session(
                Checker.standard(),
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
        Showing showing = new Showing();
        Reach reach = new Reach(commands, new KeyMap(commands, Map.of()), sentence -> {});
        part = new SpacePart(session, showing, reach, theme);
        commands.addAll(SpaceCommands.all(session, showing, part::viewpoint, Optional::empty));
        part.reduceMotion(true);
        Fonts.load();
        stage.setScene(new Scene(part.node(), 1188, 790));
        stage.show();
    }

    @Test
    void a_rack_is_dragged_to_a_pixel_and_escape_puts_another_drag_back(FxRobot robot) {
        Point before = at("rack-2");
        Point2D from = onScreen("rack-2");

        robot.moveTo(from).press(MouseButton.PRIMARY).moveBy(-8, 6).moveBy(-40, 26);
        WaitForAsyncUtils.waitForFxEvents();
        save("space-drag");
        assertThat(at("rack-2")).isNotEqualTo(before);
        assertThat(session.now().tryingOut()).isTrue();
        robot.release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();

        Point dropped = at("rack-2");
        assertThat(session.now().history().undoNames()).hasSize(1);
        robot.moveTo(onScreen("rack-2"))
                .press(MouseButton.PRIMARY)
                .moveBy(20, 10)
                .moveBy(20, 10);
        robot.type(KeyCode.ESCAPE).release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(at("rack-2")).isEqualTo(dropped);
        assertThat(session.now().history().undoNames()).hasSize(1);
    }

    @Test
    void a_view_that_got_smaller_and_larger_again_shows_what_it_showed() {
        Viewpoint viewpoint = part.viewpoint();
        WaitForAsyncUtils.waitForFxEvents();
        var before = viewpoint.now();

        WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
            viewpoint.sized(300, 790);
            viewpoint.sized(300, 200);
            viewpoint.sized(before.width(), 200);
            assertThat(viewpoint.now().scale()).isLessThan(before.scale());
            viewpoint.sized(before.width(), before.high());
            return null;
        });

        assertThat(viewpoint.now()).isEqualTo(before);
    }

    @Test
    void pictures(FxRobot robot) {
        save("space-plain");
        WaitForAsyncUtils.asyncFx(() -> {
            session.selection().only("rack-2");
            Row worst = session.now().ledger().rows().stream()
                    .filter(row -> row.place() != null && row.verdict() != Verdict.MET)
                    .findFirst()
                    .orElse(session.now().ledger().rows().get(0));
            session.selection().finding().set(Finding.of(worst));
        });
        WaitForAsyncUtils.waitForFxEvents();
        save("space-selected");
        run("view.overlay-centre-of-mass");
        run("view.overlay-floor-load");
        save("space-overlays");
        run("view.overlay-floor-load");
        run("view.section-along");
        save("space-section");
        run("view.section-off");
        run("view.x-ray");
        save("space-xray");
        run("view.x-ray");
        run("view.projection");
        save("space-perspective");
        run("view.projection");
        for (String view : new String[] {"above", "rear", "front", "left", "right"}) {
            run("view." + view);
            save("space-" + view);
        }
        run("view.pictorial");
        WaitForAsyncUtils.asyncFx(() -> part.viewpoint()
                .set(part.viewpoint().now().orbited(part.viewpoint().now().target(), 213, 30)));
        save("space-behind");
        WaitForAsyncUtils.asyncFx(() -> theme.ground().set(Ground.DARK));
        run("view.pictorial");
        save("space-dark");
    }

    private void run(String command) {
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> commands.run(command));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Point at(String unit) {
        return session.now()
                .scene()
                .unit(unit)
                .orElseThrow()
                .pose(Situation.ON_STATION)
                .at();
    }

    private Point2D onScreen(String unit) {
        var outline = session.now().scene().unit(unit).orElseThrow().outline(Situation.ON_STATION);
        var seen = part.viewpoint()
                .now()
                .project(new javafx.geometry.Point3D(
                        outline.centre().x() / 1e3, outline.centre().y() / 1e3, outline.z1() / 1e3));
        return part.node().localToScreen(seen.x(), seen.y());
    }

    private void save(String name) {
        Snapshots.keep(part.node().getScene(), name);
    }
}
