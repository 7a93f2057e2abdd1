package org.shelterwright.app.desk.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Journeys;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.ask.FailureWords;
import org.shelterwright.app.desk.ask.Notes;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.file.DocumentTalk;
import org.shelterwright.app.desk.file.Filing;
import org.shelterwright.app.desk.file.FilingNotes;
import org.shelterwright.app.desk.file.FilingTalk;
import org.shelterwright.app.desk.file.Leftovers;
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.app.desk.file.OpenedFile;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.samples.Samples;

/** New, open, save, save under a name, recent files, documents. Asks before anything unsaved is dropped. */
final class FileCommands {
    private final Workshop workshop;
    private final Session session;
    private final Filing<Layout> filing;
    private final FilingTalk<Layout> talk;
    private final Questions questions;
    private final PreferencesFile preferences;
    private final Work work;
    private final Person person;
    private final Notes notes;

    /** @param notes where what needs no answer at once is told */
    FileCommands(
            Workshop workshop,
            Session session,
            Filing<Layout> filing,
            Questions questions,
            PreferencesFile preferences,
            Work work,
            Person person,
            Notes notes) {
        this.workshop = workshop;
        this.session = session;
        this.filing = filing;
        this.questions = questions;
        this.preferences = preferences;
        this.work = work;
        this.person = person;
        this.notes = notes;
        talk = new FilingTalk<>(
                filing,
                questions,
                new FilingTalk.Subject(
                        () -> session.now().layout().brief().name(),
                        () -> session.now().layout().brief().id() + ".layout.json",
                        "Save under a name"),
                this::remember);
    }

    /**
     * @param journey opens a journey by its name
     * @param journeys the file of the journey on the desk; it is remembered among the recent ones
     */
    void addTo(Commands commands, Consumer<String> journey, ObservableValue<? extends @Nullable OnFile<?>> journeys) {
        journeys.addListener((observable, before, now) -> {
            if (now != null) {
                now.file().ifPresent(this::remember);
            }
        });
        new FilingNotes(filing, "layout", notes, () -> whenSafe(this::readAgain), talk::saveOver).start();
        commands.add(command("new", "New from a sample", "Ctrl+N", Optional::empty, this::fresh));
        commands.add(command(
                "open",
                "Open a layout or brief",
                "Ctrl+O",
                Optional::empty,
                () -> questions
                        .fileToOpen("Open a layout or brief")
                        .ifPresent(path -> openAny(path.toString(), journey))));
        commands.add(command(
                "recent",
                "Open a recent file",
                "Ctrl+R",
                () -> preferences.now().recent().isEmpty() ? Optional.of("No file was opened yet.") : Optional.empty(),
                () -> recent(journey)));
        commands.add(command("save", "Save", "Ctrl+S", Optional::empty, () -> talk.save(() -> {})));
        commands.add(command(
                "save-as", "Save under another name", "Ctrl+Shift+S", Optional::empty, () -> talk.saveAs(() -> {})));
        commands.add(command("documents", "Write the documents", "Ctrl+P", Optional::empty, this::documents));
    }

    /** Goes on once nothing unsaved is left that the person wants to keep. */
    void whenSafe(Runnable then) {
        talk.whenSafe(then);
    }

    /** Opens a file or sample, after asking about what is unsaved. */
    void open(String name) {
        whenSafe(() -> openNow(name));
    }

    /** Reads the present file again and drops what is on the desk. */
    private void readAgain() {
        filing.state().get().file().ifPresent(path -> openNow(path.toString()));
    }

    private void openNow(String name) {
        work.start(
                "Opening",
                () -> new Inputs(
                                () -> workshop.entries().get().catalog(),
                                session.checker().ruleSets())
                        .toJudge(name),
                this::show,
                failure -> questions.tell("This cannot be opened", FailureWords.of(failure)));
    }

    /** Puts a layout on the desk; gives whether it could be. */
    boolean show(Opened layout) {
        try {
            filing.open(OpenedFile.of(layout));
        } catch (IllegalArgumentException e) {
            questions.tell("This cannot be opened", String.valueOf(e.getMessage()));
            return false;
        }
        greet(layout);
        return true;
    }

    /** After a layout was opened: remembers it, says what is to be looked at, and offers unsaved work that was found. */
    void greet(Opened layout) {
        filing.state().get().file().ifPresent(this::remember);
        if (!layout.doubts().isEmpty()) {
            notes.tell(FailureWords.of(layout.doubts()));
        }
        talk.offerRecovery();
    }

    /** Tells of work on samples that a window left which ended without asking. */
    void tellLeftovers() {
        ZoneId zone = ZoneId.systemDefault();
        Leftovers.in(preferences.folder(), Samples.names()).forEach(left -> {
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put("Open it", () -> open("sample:" + left.sample()));
            answers.put("Not now", () -> {});
            String name = sample(left.sample()).name();
            notes.show("left-" + left.sample(), left.sentence(name, zone, LocalDate.now(zone)), answers);
        });
    }

    private void remember(Path path) {
        preferences.change(now -> now.withRecent(path.toAbsolutePath().toString()));
    }

    private void fresh() {
        List<String> names = Samples.names();
        questions
                .pick(
                        "New from a sample",
                        "It is opened as a new layout without a file.",
                        names.stream().map(FileCommands::sample).toList())
                .ifPresent(index -> open("sample:" + names.get(index)));
    }

    private static Questions.Choice sample(String name) {
        Brief brief = LayoutFormats.BRIEF.open(Samples.brief(name)).value();
        return new Questions.Choice(
                brief.name(),
                brief.units().size() + " units"
                        + (Samples.layout(name).isPresent() ? ", with places for all" : ", still to be placed"));
    }

    private void recent(Consumer<String> journey) {
        List<String> files = preferences.now().recent();
        questions
                .pick(
                        "Recent files",
                        "Which one is to be opened?",
                        files.stream().map(FileCommands::recent).toList())
                .ifPresent(index -> openAny(files.get(index), journey));
    }

    private void openAny(String file, Consumer<String> journey) {
        if (isJourney(file)) {
            journey.accept(file);
        } else {
            open(file);
        }
    }

    private static Questions.Choice recent(String file) {
        Path path = Path.of(file);
        return new Questions.Choice(
                String.valueOf(path.getFileName()),
                Files.exists(path) ? String.valueOf(path.getParent()) : "no longer in " + path.getParent());
    }

    /** Whether a file holds a journey; one that cannot be read holds none, and opening it says why. */
    static boolean isJourney(String file) {
        try {
            return Journeys.named(file);
        } catch (InputException e) {
            return false;
        }
    }

    private void documents() {
        Standing now = session.now();
        new DocumentTalk(questions, work, person, notes::tell)
                .write(
                        "Folder for the documents",
                        (particulars, folder) ->
                                workshop.documents().write(now.scene(), settled(now), particulars, folder));
    }

    /** The full ledger, also where part of it is still being worked out. */
    private Ledger settled(Standing standing) {
        return standing.settled()
                ? standing.ledger()
                : LedgerBuilder.full(session.checker().book(), standing.scene());
    }

    private static Command command(
            String id, String name, String keys, Supplier<Optional<String>> obstacle, Runnable action) {
        return new Command("file." + id, name, List.of("file"), List.of(keys), obstacle, action);
    }
}
