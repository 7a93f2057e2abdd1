package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.transport.JourneyPart;
import org.shelterwright.app.desk.transport.JourneySession;
import org.shelterwright.app.desk.transport.JourneyStanding;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.edit.PutStand;
import org.testfx.util.WaitForAsyncUtils;

/** The planner's page in a real window: a sample journey searched, dragged, undone, saved and opened again. */
class DeskJourneyTest extends WindowTest {
    @TempDir
    Path folder;

    private final ScriptedQuestions questions = new ScriptedQuestions();
    private Desks.Desk desk;

    @BeforeEach
    void open() {
        desk = onDesk(() -> Desks.open("sample:river-post", folder.resolve("user"), questions));
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
        run("desk.page-2");
        run("journey.sample");
        await("the journey is open", () -> session().now().isPresent());
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
    void aLoadIsFoundDraggedUntilItBreaksUndoneSavedAndOpenedAgain() throws Exception {
        picture(stage().getScene(), "journey-open");
        run("search.start");
        await("a load is found", () -> free("journey.search-take"));
        run("journey.search-take");
        picture(stage().getScene(), "journey-loaded");
        assertThat(broken()).isZero();
        Journey found = now().journey();

        drag("wagon-1", "river-post", -3_000);
        picture(stage().getScene(), "journey-broken");
        assertThat(ledger().all().rows())
                .filteredOn(row -> row.verdict() == Verdict.BROKEN)
                .extracting(Row::limit)
                .contains("transport.deck-length");
        run("ledger.next-finding");
        picture(stage().getScene(), "journey-finding");
        run("edit.undo");
        assertThat(now().journey()).isEqualTo(found);
        assertThat(broken()).isZero();

        Path file = folder.resolve("move.journey.json");
        questions.answering(file);
        run("file.save");
        await("it is saved", () -> Files.exists(file) && desk.window().journey().changesSinceSave() == 0);
        JourneyLedger before = ledger();
        onDesk(() -> {
            desk.window().journey().open(file.toString());
            return null;
        });
        await("it is open again", () -> !session().now().orElseThrow().history().canUndo());
        assertThat(ledger()).isEqualTo(before);
    }

    @Test
    void aSearchThatIsStoppedChangesNothingUntilItIsTakenOver() {
        onDesk(() -> {
            desk.window().journey().open("sample:forty-crates");
            return null;
        });
        await("the crates are there", () -> now().journey().id().equals("forty-crates"));
        Journey before = now().journey();
        robot.type(KeyCode.F7);
        await("it goes on", () -> free("journey.search-stop"));
        robot.press(KeyCode.SHIFT).type(KeyCode.F7).release(KeyCode.SHIFT);

        await("it has ended", () -> free("journey.search"));
        picture(stage().getScene(), "journey-stopped");
        assertThat(now().journey()).isEqualTo(before);
        if (onDesk(() -> free("journey.search-take"))) {
            run("journey.search-take");
            assertThat(ledger()).isEqualTo(JourneyChecker.standard().check(now().scene()));
        }
    }

    @Test
    void aFindingOfALegIsAcceptedWithAReasonAndThatIsSavedWithTheJourney() {
        onDesk(() -> {
            session().apply(new PutStand("wagon-1", "river-post", Pose.at(Point.ofMm(-2_000, 160, 0))));
            return null;
        });
        run("ledger.worst-finding");
        Finding finding = onDesk(() -> session().focus().get().finding());
        questions.answering("P. Planner", "The keeper was asked.");

        robot.clickOn("Accept with a reason");

        await("it is accepted", () -> accepted(finding).isPresent());
        picture(stage().getScene(), "journey-accepted");
        assertThat(accepted(finding).orElseThrow().reason()).isEqualTo("The keeper was asked.");
        assertThat(questions.asked()).anyMatch(asked -> asked.contains("The ledger will go on showing it as broken"));
        robot.clickOn("Accept no more");
        await("it is taken back", () -> accepted(finding).isEmpty());
        run("edit.undo");
        Path file = folder.resolve("move.journey.json");
        questions.answering(file);
        run("file.save");
        await("it is saved", () -> Files.exists(file) && desk.window().journey().changesSinceSave() == 0);
        assertThat(file).content().contains("The keeper was asked.");
    }

    private Optional<Acceptance> accepted(Finding finding) {
        return session().leg().orElseThrow().leg().acceptance(finding.limit(), finding.units());
    }

    @Test
    void ordersOfTheFrameMeanTheJourneyOnItsPageOnly() {
        JourneyPart.INSTEAD.forEach((asked, done) -> {
            assertThat(desk.window().commands().byId(asked)).as(asked).isPresent();
            assertThat(desk.window().commands().byId(done)).as(done).isPresent();
        });
        assertThat(onDesk(() -> desk.window().commands().run("edit.undo"))).contains("Nothing was changed yet.");
        onDesk(() -> {
            session().apply(new PutStand("wagon-2", "water-lab", Pose.at(Point.ofMm(0, 0, 0))));
            return null;
        });
        run("edit.undo");
        assertThat(now().history().canRedo()).isTrue();
        run("desk.page-1");
        assertThat(onDesk(() -> desk.window().commands().run("edit.redo"))).contains("Nothing was undone.");
    }

    private void drag(String load, String piece, double mm) {
        onDesk(() -> {
            session().look(focus -> focus.onPieces(Set.of()));
            return null;
        });
        var placed = now().scene().load(load).orElseThrow().piece(piece).orElseThrow();
        Point from =
                placed.solids().get(placed.solids().size() - 1).face(Face.TOP).centre();
        awaitRest("the view is at rest", () -> seen(from));
        robot.moveTo(seen(from)).press(MouseButton.PRIMARY);
        for (int i = 1; i <= 6; i++) {
            robot.moveTo(seen(new Point(from.x() + (int) (mm * 1000 * i / 6), from.y(), from.z())));
        }
        await("it is held", () -> now().tryingOut());
        picture(stage().getScene(), "journey-held");
        robot.release(MouseButton.PRIMARY);
        await("it was dropped", () -> !now().tryingOut());
    }

    private Point2D seen(Point place) {
        return onDesk(() -> desk.window().journey().onScreen(place));
    }

    private long broken() {
        return ledger().all().count(Verdict.BROKEN);
    }

    private JourneyLedger ledger() {
        return onDesk(() -> now().ledger());
    }

    private JourneyStanding now() {
        return onDesk(() -> session().now().orElseThrow());
    }

    private JourneySession session() {
        return desk.window().journey().session();
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
        onDesk(() -> desk.window().commands().run(command)).ifPresent(why -> {
            throw new AssertionError(command + ": " + why);
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Stage stage() {
        return desk.window().stage();
    }
}
