package org.shelterwright.app.desk.transport;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Journeys;
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
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.app.desk.file.OpenedFile;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.app.journey.JourneyReport;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.OpenedJourney;

/** Opens, saves and documents the journey. Asks before anything unsaved is dropped. */
final class JourneyFileCommands {
    static final String SAMPLE = "sample:road-rail-move";
    private final Workshop workshop;
    private final JourneySession session;
    private final Questions questions;
    private final Work work;
    private final Work keeping;
    private final Path userFolder;
    private final Person person;
    private final Notes notes;
    private final ReadOnlyObjectWrapper<@Nullable OnFile<JourneyWork>> state = new ReadOnlyObjectWrapper<>(null);
    private @Nullable Filing<JourneyWork> filing;
    private @Nullable FilingTalk<JourneyWork> talk;

    /**
     * @param work for what a person waits for
     * @param keeping for saving, and for keeping what is not saved
     * @param userFolder where unsaved work without a file is kept
     * @param notes where what needs no answer at once is told
     */
    JourneyFileCommands(
            Workshop workshop,
            JourneySession session,
            Questions questions,
            Work work,
            Work keeping,
            Path userFolder,
            Person person,
            Notes notes) {
        this.workshop = workshop;
        this.session = session;
        this.questions = questions;
        this.work = work;
        this.keeping = keeping;
        this.userFolder = userFolder;
        this.person = person;
        this.notes = notes;
    }

    void addTo(Commands commands) {
        add(
                commands,
                "open",
                "Open a journey",
                Optional::empty,
                () -> questions.fileToOpen("Open a journey").ifPresent(path -> open(path.toString())));
        add(commands, "sample", "Open the sample Road-Rail Move", Optional::empty, () -> open(SAMPLE));
        add(commands, "save", "Save the journey", this::none, () -> withTalk(talk -> talk.save(() -> {})));
        add(
                commands,
                "save-as",
                "Save the journey under another name",
                this::none,
                () -> withTalk(talk -> talk.saveAs(() -> {})));
        add(commands, "documents", "Write the documents of the journey", this::none, this::documents);
    }

    /** What stands in the file; {@code null} as long as no journey is open. */
    ReadOnlyObjectProperty<@Nullable OnFile<JourneyWork>> state() {
        return state.getReadOnlyProperty();
    }

    int changesSinceSave() {
        return filing == null ? 0 : filing.changesSinceSave();
    }

    /** Looks whether another has changed the file, and says so once. */
    void look() {
        if (filing != null) {
            filing.look();
        }
    }

    void close() {
        if (filing != null) {
            filing.close();
        }
    }

    /** Goes on once nothing unsaved is left that the person wants to keep. */
    void whenSafe(Runnable then) {
        if (talk == null) {
            then.run();
        } else {
            talk.whenSafe(then);
        }
    }

    /** Opens a file or sample, after asking about what is unsaved. */
    void open(String name) {
        whenSafe(() -> work.start(
                "Opening",
                () -> journeys().open(name),
                opened -> show(name, opened),
                failure -> questions.tell("This cannot be opened", FailureWords.of(failure))));
    }

    private Journeys journeys() {
        return new Journeys(
                () -> workshop.entries().get().catalog(), session.checker().ruleSets());
    }

    private void show(String name, OpenedJourney opened) {
        JourneyWork content = new JourneyWork(opened.journey(), opened.parts());
        boolean sample = name.startsWith("sample:");
        OpenedFile<JourneyWork> file =
                new OpenedFile<>(name, content, sample ? Fingerprint.NONE : opened.fingerprint());
        try {
            Filing<JourneyWork> before = filing;
            if (before == null) {
                session.open(content);
                Filing<JourneyWork> made = new Filing<>(
                        new FiledJourney(session, this::read), file, keeping, Clock.systemDefaultZone(), userFolder);
                made.state().addListener((observable, was, now) -> state.set(now));
                filing = made;
                FilingTalk<JourneyWork> talking = talk(made);
                talk = talking;
                new FilingNotes(made, "journey", notes, this::readAgain, talking::saveOver).start();
                state.set(made.state().get());
            } else {
                before.open(file);
            }
        } catch (IllegalArgumentException e) {
            questions.tell("This cannot be opened", String.valueOf(e.getMessage()));
            return;
        }
        if (!opened.doubts().isEmpty()) {
            notes.tell(FailureWords.of(opened.doubts()));
        }
        withTalk(FilingTalk::offerRecovery);
    }

    private void readAgain() {
        if (filing != null) {
            filing.state().get().file().ifPresent(path -> open(path.toString()));
        }
    }

    private JourneyWork read(Path path) {
        OpenedJourney opened = journeys().open(path.toString());
        return new JourneyWork(opened.journey(), opened.parts());
    }

    private FilingTalk<JourneyWork> talk(Filing<JourneyWork> made) {
        return new FilingTalk<>(
                made,
                questions,
                new FilingTalk.Subject(
                        () -> "The journey "
                                + session.now().map(now -> now.journey().name()).orElse("on the desk"),
                        () -> session.now().map(now -> now.journey().id()).orElse("journey") + ".journey.json",
                        "Save the journey under a name"),
                path -> {});
    }

    private void withTalk(Consumer<FilingTalk<JourneyWork>> what) {
        if (talk != null) {
            what.accept(talk);
        }
    }

    private void documents() {
        JourneyStanding now = session.now().orElseThrow();
        new DocumentTalk(questions, work, person, notes::tell)
                .write(
                        "Folder for the documents of the journey",
                        (particulars, folder) -> new JourneyReport(
                                        workshop.version().line())
                                .write(now.scene(), now.ledger(), List.of(), particulars, folder));
    }

    private Optional<String> none() {
        return session.now().isPresent()
                ? Optional.empty()
                : Optional.of("No journey is open. Open one, or the sample Road-Rail Move.");
    }

    private static void add(
            Commands commands, String id, String name, Supplier<Optional<String>> obstacle, Runnable action) {
        commands.add(new Command("journey." + id, name, List.of("journey", "file"), List.of(), obstacle, action));
    }
}
