package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.look.Ground;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;

/** What a person does at the desk, with the keyboard alone. */
class DeskKeyboardTest extends WindowTest {
    @TempDir
    Path folder;

    private final ScriptedQuestions questions = new ScriptedQuestions();
    private Desks.Desk desk;

    @BeforeEach
    void open() {
        desk = open("sample:river-post");
    }

    @AfterEach
    void close() {
        if (desk != null) {
            onDesk(() -> {
                desk.window().stage().hide();
                return null;
            });
        }
    }

    @Test
    void theWorstFindingIsFoundAndShown() {
        onDesk(() -> {
            desk.window().session().apply(new TakeOutUnit("rack-1"));
            return null;
        });

        robot.press(KeyCode.CONTROL).type(KeyCode.F8).release(KeyCode.CONTROL);

        await(
                "the worst finding is looked at",
                () -> Finding.of(ledger().rows().get(0))
                        .equals(desk.window().session().selection().finding().get()));
        List<String> units = onDesk(() -> ledger().rows().get(0).units());
        assertThat(onDesk(() -> desk.window().session().selection().units().get()))
                .containsAll(units);
        String sentence = onDesk(() -> ledger().rows().get(0).finding());
        assertThat(texts(".card .label")).contains(sentence);
    }

    @Test
    void arrowsLookAtRowsAndEnterShowsTheirPlace() {
        robot.press(KeyCode.CONTROL).type(KeyCode.L).release(KeyCode.CONTROL);
        robot.type(KeyCode.DOWN).type(KeyCode.DOWN);
        await(
                "a row is looked at",
                () -> desk.window().session().selection().finding().get() != null);
        robot.type(KeyCode.HOME).type(KeyCode.ENTER);

        await(
                "the first row is looked at",
                () -> Finding.of(ledger().rows().get(0))
                        .equals(desk.window().session().selection().finding().get()));
    }

    @Test
    void aCommandIsFoundByTypingAndDone() {
        robot.press(KeyCode.CONTROL).type(KeyCode.SPACE).release(KeyCode.CONTROL);
        robot.write("light and");
        await(
                "it is listed",
                () -> commandList() != null
                        && commandList().getItems().get(0).id().equals("look.ground"));

        robot.type(KeyCode.ENTER);

        await("it is dark", () -> desk.window().theme().ground().get() == Ground.DARK);
        assertThat(onDesk(this::commandList)).as("the list is gone").isNull();
    }

    @Test
    void aCommandThatCannotBeDoneSaysWhy() {
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);

        await("the reason is shown", () -> texts(".status .figure").contains("Nothing was changed yet."));
    }

    @Test
    void savedAndOpenedAgainTheLedgerIsTheSame() {
        Path file = folder.resolve("kept.layout.json");
        questions.answering(file);
        onDesk(() -> {
            desk.window().session().apply(new TakeOutUnit("rack-1"));
            return null;
        });
        await("every limit is answered", () -> desk.window().session().now().settled());
        Ledger before = onDesk(this::ledger);

        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        await("it is saved", () -> texts(".top-band .second").contains("saved just now"));
        robot.press(KeyCode.CONTROL).type(KeyCode.Q).release(KeyCode.CONTROL);
        await("it is closed", () -> desk.closed().isDone());
        assertThat(Files.exists(folder.resolve("kept.layout.unsaved.json"))).isFalse();

        desk = open(file.toString());
        await(
                "every limit is answered again",
                () -> desk.window().session().now().settled());
        assertThat(onDesk(this::ledger)).isEqualTo(before);
        assertThat(questions.asked()).hasSize(1);
    }

    @Test
    void closingWithChangesAsksFirst() {
        onDesk(() -> {
            desk.window().session().apply(new TakeOutUnit("rack-1"));
            return null;
        });
        questions.answering("Stay here", "Drop the changes");

        robot.press(KeyCode.CONTROL).type(KeyCode.Q).release(KeyCode.CONTROL);
        await("it was asked", () -> questions.asked().size() == 1);
        assertThat(questions.asked().get(0)).isEqualTo("Save first?: River Post has 1 change that is not saved.");
        assertThat(desk.closed()).isNotDone();

        robot.press(KeyCode.CONTROL).type(KeyCode.Q).release(KeyCode.CONTROL);
        await("it is closed", () -> desk.closed().isDone());
    }

    @Test
    void aChangeIsUndoneFromTheListOfChanges() {
        onDesk(() -> {
            desk.window().session().apply(new TakeOutUnit("rack-1"));
            desk.window().session().apply(new TakeOutUnit("rack-2"));
            return null;
        });

        robot.press(KeyCode.CONTROL).type(KeyCode.H).release(KeyCode.CONTROL);
        await("the list is open", () -> stage().getScene().lookup("#history-list") != null);
        robot.type(KeyCode.UP).type(KeyCode.ENTER);

        await(
                "one is undone",
                () -> desk.window().session().now().history().undoNames().size() == 1);
        assertThat(onDesk(() -> desk.window().session().now().history().redoNames()))
                .containsExactly("Take out rack-2");
    }

    @Test
    void theLookIsRememberedFromOneDayToTheNext() {
        robot.press(KeyCode.CONTROL, KeyCode.ALT).type(KeyCode.D).release(KeyCode.ALT, KeyCode.CONTROL);
        await("it is dark", () -> desk.window().theme().ground().get() == Ground.DARK);
        robot.press(KeyCode.CONTROL).type(KeyCode.Q).release(KeyCode.CONTROL);
        await("it is closed", () -> desk.closed().isDone());

        desk = open("sample:river-post");

        assertThat(onDesk(() -> desk.window().theme().ground().get())).isEqualTo(Ground.DARK);
    }

    @Test
    void documentsAreWrittenAndTold() {
        Path out = folder.resolve("documents");
        questions.answering(out);

        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);

        await(
                "it is told",
                () -> texts(".notice .label").stream()
                        .anyMatch(text -> text.matches("\\d+ documents were written to \\Q" + out + "\\E\\.")));
        assertThat(out)
                .isDirectoryContaining("glob:**ledger.csv")
                .isDirectoryContaining("glob:**general-arrangement.pdf");
    }

    @Test
    void aChangeByAnotherIsToldAndTheFileReadAgain() throws Exception {
        Layout start = onDesk(() -> desk.window().session().now().layout());
        Path file = folder.resolve("shared.json");
        LayoutFiles.write(start, file, Fingerprint.NONE);
        close();
        desk = open(file.toString());

        Layout changed = new TakeOutUnit("rack-1").apply(start);
        Files.write(file, LayoutFiles.bytes(changed));
        await(
                "it is told",
                () -> texts(".notice .label").stream()
                        .anyMatch(words -> words.endsWith(" was changed by another since it was read.")));
        robot.clickOn("Read it again");

        await("it is read again", () -> desk.window().session().now().layout().equals(changed));
        await("the notice is gone", () -> texts(".notice .label").isEmpty());
    }

    @Test
    void aFileThatIsOpenInAnotherWindowIsReadOnly() {
        Path file = folder.resolve("shared.json");
        LayoutFiles.write(onDesk(() -> desk.window().session().now().layout()), file, Fingerprint.NONE);
        close();
        Desks.Desk first = open(file.toString());
        desk = open(file.toString());

        assertThat(texts(".top-band .second")).contains("read only");
        assertThat(texts(".notice .label"))
                .anyMatch(text -> text.startsWith("shared.json is open in another window ("));
        picture(stage().getScene(), "read-only");
        onDesk(() -> {
            first.window().stage().hide();
            return null;
        });
    }

    @Test
    void anOrderThatMakesNoSenseIsRefusedInOneSentence() {
        Platform.runLater(() -> desk.window().session().apply(new TakeOutUnit("nobody")));

        await(
                "it is told",
                () -> texts(".status .figure").stream()
                        .anyMatch(text -> text.startsWith("The brief has no unit \"nobody\".")));
    }

    @Test
    void noTwoCommandsHaveTheSameKeys() {
        Map<String, List<String>> owners = new TreeMap<>();
        KeyMap keys = new KeyMap(desk.window().commands(), Map.of());

        for (Command command : desk.window().commands().all()) {
            for (String one : keys.keys(command)) {
                owners.computeIfAbsent(one, key -> new ArrayList<>()).add(command.id());
            }
        }

        assertThat(owners).allSatisfy((key, ids) -> assertThat(ids).as(key).hasSize(1));
    }

    @Test
    void everyKeyOfACommandIsOneThatAKeyboardHas() {
        assertThat(desk.window().commands().all())
                .flatExtracting(Command::keys)
                .allSatisfy(keys -> assertThat(Keystroke.exists(keys)).as(keys).isTrue());
    }

    @Test
    void undoIsAboutTheLayoutWhileNothingIsBeingTypedInAField() {
        select("rack-1");
        robot.clickOn("#unit-x").press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("1850+25").type(KeyCode.ENTER);
        await("it has moved", () -> undoable() == 1);

        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);

        await("it is back", () -> undoable() == 0);
        robot.write("7").press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        assertThat(onDesk(() -> desk.window().session().now().history().redoNames()))
                .hasSize(1);
    }

    @Test
    void keysBelongToAListThatIsOpen() {
        select("rack-1");
        robot.clickOn("On station").type(KeyCode.DOWN).type(KeyCode.DOWN).type(KeyCode.ENTER);

        await(
                "the layout is shown on the road",
                () -> desk.window().session().situation().get() == Situation.ON_THE_ROAD);
        assertThat(onDesk(this::undoable)).as("no unit was moved by the arrows").isZero();
    }

    @Test
    void filesAreToBeHadByThePointerBelowTheName() {
        questions.answering("Water Lab");

        robot.clickOn("#files");
        await(
                "the keys of the list stand below each other",
                () -> rightEdgesOfKeys().size() == 1);
        robot.clickOn("New from a sample");

        await(
                "it is open",
                () -> desk.window().session().now().layout().brief().name().equals("Water Lab"));
    }

    @Test
    void whyACommandWasNotDoneIsGoneAfterTheNextOne() {
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        await("the reason is shown", () -> texts(".status .figure").contains("Nothing was changed yet."));

        robot.press(KeyCode.CONTROL, KeyCode.ALT).type(KeyCode.D).release(KeyCode.ALT, KeyCode.CONTROL);

        await("it is gone", () -> !texts(".status .figure").contains("Nothing was changed yet."));
    }

    @Test
    void aJourneyIsAmongTheRecentFilesAndOpensOnItsPage() {
        Path file = folder.resolve("move.journey.json");
        run("journey.sample");
        await("it is open", () -> desk.window().journey().session().now().isPresent());
        questions.answering(file, "move.journey.json");
        run("journey.save-as");
        await("it is saved", () -> Files.exists(file) && desk.window().journey().changesSinceSave() == 0);
        assertThat(onDesk(() -> stage().getScene().lookup("#car-space"))).isNull();

        robot.press(KeyCode.CONTROL).type(KeyCode.R).release(KeyCode.CONTROL);

        await("its page is shown", () -> stage().getScene().lookup("#car-space") != null);
        assertThat(questions.asked()).contains("Recent files: Which one is to be opened?");
    }

    /** Where the keys in the list that is open end (whole px). */
    private Set<Long> rightEdgesOfKeys() {
        return Window.getWindows().stream()
                .filter(ContextMenu.class::isInstance)
                .flatMap(window -> window.getScene().getRoot().lookupAll(".key").stream())
                .map(key -> Math.round(key.localToScene(key.getBoundsInLocal()).getMaxX()))
                .collect(Collectors.toSet());
    }

    private void run(String command) {
        onDesk(() -> desk.window().commands().run(command)).ifPresent(why -> {
            throw new AssertionError(command + ": " + why);
        });
    }

    private void select(String unit) {
        onDesk(() -> {
            desk.window().session().selection().set(Set.of(unit));
            return null;
        });
    }

    private int undoable() {
        return desk.window().session().now().history().undoNames().size();
    }

    private Desks.Desk open(String name) {
        Desks.Desk opened = onDesk(() -> Desks.open(name, folder.resolve("user"), questions));
        onDesk(() -> {
            opened.window().stage().requestFocus();
            opened.window().stage().toFront();
            return null;
        });
        await("the window has the focus", () -> opened.window().stage().isFocused());
        return opened;
    }

    private Stage stage() {
        return desk.window().stage();
    }

    private Ledger ledger() {
        return desk.window().session().now().ledger();
    }

    @SuppressWarnings("unchecked")
    private ListView<Command> commandList() {
        return (ListView<Command>) stage().getScene().lookup("#command-list");
    }

    private List<String> texts(String selector) {
        return stage().getScene().getRoot().lookupAll(selector).stream()
                .filter(Labeled.class::isInstance)
                .map(node -> ((Labeled) node).getText())
                .toList();
    }
}
