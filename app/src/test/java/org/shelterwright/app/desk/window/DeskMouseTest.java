package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListCell;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.hand.HandPost;
import org.shelterwright.app.desk.hand.Neighbours;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.testfx.util.WaitForAsyncUtils;

/** What a person does at the desk with the mouse, on a layout whose places stay as they are. */
class DeskMouseTest extends WindowTest {
    private static final String LOCKER = "gauge-locker";
    private static final String RACK = "rack-2";

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
    void aRackDraggedIntoAClearZoneBreaksItsRowAndMarksThePlaceUntilItIsUndone() {
        assertThat(broken(between(RACK, LOCKER))).isEmpty();

        BufferedImage before = Snapshots.of(stage().getScene());
        hold(RACK, Point.ofMm(-600, -720, 0));

        await("a row breaks", () -> !broken(between(RACK, LOCKER)).isEmpty());
        Row row = broken(between(RACK, LOCKER)).get(0);
        assertThat(row.place()).isNotNull();
        assertThat(onDesk(() -> session().now().tryingOut())).isTrue();
        BufferedImage held = Snapshots.of(stage().getScene());
        picture(stage().getScene(), "held");
        assertThat(marks(held, row.place())).as("the place is marked").isGreaterThan(300);
        assertThat(marks(before, row.place())).as("it was not before").isLessThan(100);
        assertThat(onDesk(() -> held().isVisible())).isTrue();
        assertThat(texts("#held-card .label")).contains(row.finding());

        robot.release(MouseButton.PRIMARY);
        await("it is kept", () -> !session().now().tryingOut());
        assertThat(broken(between(RACK, LOCKER))).isNotEmpty();
        assertThat(undoNames()).containsExactly("Drag Telemetry rack 2");
        assertThat(onDesk(() -> held().isVisible())).isFalse();

        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        await("it is undone", () -> session().now().layout().equals(start));
        assertThat(broken(between(RACK, LOCKER))).isEmpty();
    }

    @Test
    void aUnitIsMovedByFigureTurnedAndPinned() {
        robot.clickOn(top("rack-1"));
        await("it is selected", () -> session().selection().holds("rack-1"));

        robot.doubleClickOn("#unit-x").write("25.4").type(KeyCode.ENTER);
        await("it is moved", () -> at("rack-1").equals(new Point(25_400, 100_000, 0)));
        robot.clickOn(top("rack-1")).type(KeyCode.T);
        await("it is turned", () -> placement("rack-1").station().pose().yaw() == QuarterTurn.R180);
        robot.type(KeyCode.P);
        await("it is pinned", () -> placement("rack-1").pin().equals(Pin.ALL));

        assertThat(undoNames())
                .containsExactly("Pin Telemetry rack 1", "Turn left Telemetry rack 1", "Set x of Telemetry rack 1");
        hold("rack-1", Point.ofMm(300, 200, 0));
        robot.release(MouseButton.PRIMARY);
        assertThat(undoNames()).as("a pinned unit is not dragged").hasSize(3);
    }

    @Test
    void aDistanceTypedInADragIsKeptExactly() {
        hold("rack-1", Point.ofMm(0, 60, 0));
        robot.write("37.5");
        await("it stands there", () -> distances("rack-1").contains(37_500));
        picture(stage().getScene(), "typed");
        robot.release(MouseButton.PRIMARY);

        await("it is kept", () -> !session().now().tryingOut());
        assertThat(onDesk(() -> distances("rack-1"))).contains(37_500);
        assertThat(undoNames()).containsExactly("Drag Telemetry rack 1");
    }

    @Test
    void anAxisHeldInADragKeepsTheOther() {
        hold("rack-1", Point.ofMm(40, 30, 0));
        robot.type(KeyCode.X);
        drag("rack-1", Point.ofMm(170, 120, 0));
        await(
                "it follows along x alone",
                () -> at("rack-1").x() > 1_150_000 && at("rack-1").y() == 100_000);

        robot.type(KeyCode.ESCAPE);
        await("Esc puts it back", () -> session().now().layout().equals(start));
        robot.release(MouseButton.PRIMARY);
        assertThat(undoNames()).isEmpty();
    }

    @Test
    void whatIsStillToPlaceIsDraggedFromTheListIntoTheView() {
        takeOut("rack-1");
        Node row = onDesk(() -> stage().getScene().getRoot().lookupAll("#equipment-list .list-cell").stream()
                .filter(node -> String.valueOf(node.getAccessibleText()).startsWith("Telemetry rack 1"))
                .findFirst()
                .orElseThrow());

        robot.drag(row, MouseButton.PRIMARY).moveBy(30, 0).moveTo(onScreen(Point.ofMm(1350, 450, 0)));
        robot.moveBy(2, 2);
        await("it is held", () -> session().now().tryingOut());
        picture(stage().getScene(), "carried");
        robot.drop();

        await(
                "it is placed",
                () -> !session().now().tryingOut()
                        && session().now().layout().placements().containsKey("rack-1"));
        assertThat(undoNames().get(0)).isEqualTo("Place Telemetry rack 1");
        Box outline = onDesk(() -> unit("rack-1").outline(Situation.ON_STATION));
        assertThat(Math.abs(outline.centre().x() - 1_350_000)).isLessThan(200_000);
        assertThat(Math.abs(outline.centre().y() - 450_000)).isLessThan(200_000);
    }

    @Test
    void anItemIsDrawnFromTheCatalogIntoTheView() {
        onDesk(() -> desk.window().commands().run("list.catalog"));
        await("the catalog is there", () -> stage().getScene().lookup("#catalog-list") != null);
        robot.write("24 U").type(KeyCode.DOWN);
        await(
                "the list has the focus",
                () -> stage().getScene().lookup("#catalog-list").isFocused());
        Node row = onDesk(() -> stage().getScene().getRoot().lookupAll("#catalog-list .list-cell").stream()
                .filter(node -> ((ListCell<?>) node).getItem() instanceof Item)
                .findFirst()
                .orElseThrow());

        robot.drag(row, MouseButton.PRIMARY).moveBy(30, 0).moveTo(onScreen(Point.ofMm(2350, 1250, 0)));
        robot.moveBy(2, 2);
        await("it is held", () -> session().now().tryingOut());
        picture(stage().getScene(), "drawn");
        robot.drop();

        await("it is placed", () -> !session().now().tryingOut() && undoNames().size() == 1);
        String added = onDesk(() -> session().selection().leader().orElseThrow());
        assertThat(undoNames()).containsExactly("Add Rack 19 in, 24 U");
        assertThat(onDesk(() -> session().now().layout().placements())).containsKey(added);
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        await("it is undone", () -> session().now().layout().equals(start));
    }

    @Test
    void aDragGoesOntoWhatIsPointedAtWhenAskedAndAlongItsSurfaceAgain() {
        hold("screen-1", Point.ofMm(20, -60, 0));
        await("it slides", () -> session().now().tryingOut());
        // One screen may hide the other, as the view lies: the one that was caught is the one that is looked at.
        String caught = onDesk(() -> session().selection().leader().orElseThrow());
        String host = start.placements().get(caught).station().host();
        robot.type(KeyCode.M);
        Box table = onDesk(() -> unit("chart-table").outline(Situation.ON_STATION));
        robot.moveTo(onScreen(new Point(table.centre().x(), table.centre().y(), table.z1())));
        await("it stands on the table", () -> onTable(caught));
        picture(stage().getScene(), "mounting");

        robot.type(KeyCode.M);
        await(
                "it is back where it stood",
                () -> Objects.equals(host, placement(caught).station().host()));
        robot.type(KeyCode.M);
        robot.moveBy(1, 1);
        await("and on the table once more", () -> onTable(caught));
        robot.release(MouseButton.PRIMARY);

        await("it is kept", () -> !session().now().tryingOut());
        assertThat(undoNames())
                .containsExactly("Move " + onDesk(() -> unit(caught).name()));
        assertThat(onDesk(() -> onTable(caught))).isTrue();
    }

    private boolean onTable(String unit) {
        return "chart-table".equals(placement(unit).station().host());
    }

    @Test
    void thePlaceUnderThePointerIsTold() {
        robot.moveTo(onScreen(Point.ofMm(2350, 1200, 0))).moveBy(1, 1);

        await("it is told", () -> texts(".status .label").contains("Pointer, mm"));
        assertThat(texts(".status .label")).anyMatch(words -> words.matches("x [\\d\u2009\u202F ]+, y .*, z .*"));
    }

    @Test
    void whyAUnitDoesNotStandWhereThePointerIsIsAnswered() {
        takeOut("rack-1");
        onDesk(() -> {
            session().selection().only("rack-1");
            desk.window().middle().node().lookup("#space").requestFocus();
            return null;
        });
        robot.moveTo(onScreen(Point.ofMm(2350, 1200, 0))).moveBy(1, 1);

        robot.type(KeyCode.Q);

        await("it is answered", () -> stage().getScene().lookup("#why-not-here") != null);
        List<Row> rows = broken(row -> row.units().contains("rack-1"));
        picture(stage().getScene(), "why-not-here");
        assertThat(rows).isNotEmpty();
        assertThat(texts("#why-not-here .label")).contains(rows.get(0).finding());
        assertThat(texts("#why-not-here .label"))
                .containsAll(rows.stream()
                        .map(Row::mend)
                        .filter(mend -> mend != null)
                        .toList());
        robot.type(KeyCode.ESCAPE);
        await("it is left", () -> !session().now().tryingOut());
        assertThat(undoNames()).hasSize(1);
    }

    private void takeOut(String unit) {
        onDesk(() -> {
            session().apply(new TakeOutUnit(unit));
            return null;
        });
        WaitForAsyncUtils.waitForFxEvents();
        awaitRest("the view shows it", () -> session().now().scene().units().size());
    }

    /** Presses on the top of a unit and drags it by a way. */
    private void hold(String unit, Point way) {
        robot.moveTo(top(unit)).press(MouseButton.PRIMARY);
        drag(unit, way);
    }

    private void drag(String unit, Point way) {
        Point from = start.placements().get(unit) == null ? Point.ORIGIN : topOf(unit);
        for (int step = 1; step <= 4; step++) {
            Point at = new Point(
                    from.x() + way.x() / 4 * step, from.y() + way.y() / 4 * step, from.z() + way.z() / 4 * step);
            robot.moveTo(onScreen(at));
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Point2D top(String unit) {
        return onScreen(topOf(unit));
    }

    private Point topOf(String unit) {
        Box outline = onDesk(() -> unit(unit).outline(Situation.ON_STATION));
        Point centre = outline.centre();
        return new Point(centre.x(), centre.y(), outline.z1());
    }

    private Point2D onScreen(Point place) {
        return onDesk(() -> desk.window().middle().space().orElseThrow().onScreen(place));
    }

    /** Pixels around the lower middle of a place that are as red as what is broken. */
    private long marks(BufferedImage picture, Box place) {
        Point centre = place.centre();
        Point2D at = onScreen(new Point(centre.x(), centre.y(), place.z0() + (place.z1() - place.z0()) / 3));
        Point2D inScene = onDesk(() -> stage().getScene().getRoot().screenToLocal(at));
        long found = 0;
        for (int y = (int) inScene.getY() - 14; y <= inScene.getY() + 14; y++) {
            for (int x = (int) inScene.getX() - 14; x <= inScene.getX() + 14; x++) {
                int red = picture.getRGB(x, y) >> 16 & 255;
                int green = picture.getRGB(x, y) >> 8 & 255;
                found += red > green + 40 ? 1 : 0;
            }
        }
        return found;
    }

    private static Predicate<Row> between(String one, String other) {
        return row -> row.units().containsAll(Set.of(one, other));
    }

    private List<Row> broken(Predicate<Row> asked) {
        return onDesk(() -> session().now().ledger().rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .filter(asked)
                .toList());
    }

    private List<Integer> distances(String unit) {
        return Neighbours.of(session().now().scene(), unit(unit), Situation.ON_STATION).stream()
                .map(one -> one.length())
                .toList();
    }

    private Node held() {
        return stage().getScene().lookup("#held-card");
    }

    private PlacedUnit unit(String id) {
        return session().now().scene().unit(id).orElseThrow();
    }

    private Point at(String unit) {
        return unit(unit).pose(Situation.ON_STATION).at();
    }

    private Placement placement(String unit) {
        return session().now().layout().placements().get(unit);
    }

    private List<String> undoNames() {
        return onDesk(() -> session().now().history().undoNames());
    }

    private List<String> texts(String selector) {
        return onDesk(() -> stage().getScene().getRoot().lookupAll(selector).stream()
                .filter(Labeled.class::isInstance)
                .map(node -> ((Labeled) node).getText())
                .toList());
    }

    private Session session() {
        return desk.window().session();
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
