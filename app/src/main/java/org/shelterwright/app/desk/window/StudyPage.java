package org.shelterwright.app.desk.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.desk.ask.FailureWords;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.study.RunBoard;
import org.shelterwright.app.desk.study.StudyPart;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.study.Compared;
import org.shelterwright.app.study.StudyDocuments;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;

/** Opens the results of a study as a page of the window, and goes back to what was there. */
final class StudyPage {
    private static final String NONE = "No study is open. Open one first.";

    private final DeskFrame frame;
    private final Session session;
    private final FileCommands files;
    private final Questions questions;
    private final Work work;
    private final Theme theme;
    private final String program;
    private @Nullable Commands commands;
    private @Nullable Open open;

    /** @param before the page that was there */
    private record Open(StudyFolder folder, StudyPart part, Region before) {}

    /** What was read of a folder. */
    private record Read(StudyFolder folder, List<RunResult> runs) {}

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    StudyPage(
            DeskFrame frame,
            Session session,
            FileCommands files,
            Questions questions,
            Work work,
            Theme theme,
            String program) {
        this.frame = frame;
        this.session = session;
        this.files = files;
        this.questions = questions;
        this.work = work;
        this.theme = theme;
        this.program = program;
    }

    void addTo(Commands all) {
        commands = all;
        all.add(command(
                "open",
                "Open the results of a study",
                List.of("runs", "trade-off", "variants"),
                List.of("Ctrl+Shift+O"),
                Optional::empty,
                () -> questions.folder("Folder that a study was run into").ifPresent(this::open)));
        all.add(command(
                "compare",
                "Compare the chosen runs",
                List.of("side by side"),
                List.of(),
                () -> open().map(now -> now.part.board().whyNotCompared()).orElse(Optional.of(NONE)),
                () -> open().ifPresent(this::compare)));
        all.add(command(
                "layout",
                "Open the chosen run as a layout",
                List.of("fit-out"),
                List.of(),
                () -> open().map(now -> now.part.board().whyNotOpened()).orElse(Optional.of(NONE)),
                () -> open().ifPresent(this::layout)));
        all.add(command(
                "back",
                "Leave the study",
                List.of("close", "runs"),
                List.of(),
                () -> open().isPresent() ? Optional.empty() : Optional.of(NONE),
                this::back));
    }

    private static Command command(
            String id,
            String name,
            List<String> words,
            List<String> keys,
            Supplier<Optional<String>> obstacle,
            Runnable action) {
        return new Command("study." + id, name, words, keys, obstacle, action);
    }

    private Optional<Open> open() {
        return Optional.ofNullable(open);
    }

    /** Reads a folder and shows what is in it. */
    void open(Path path) {
        work.start(
                "Reading a study",
                () -> {
                    StudyFolder folder = StudyFolder.open(path);
                    return new Read(folder, folder.table());
                },
                this::show,
                failure -> questions.tell("This study cannot be opened", FailureWords.of(failure)));
    }

    private void show(Read read) {
        Commands all = commands;
        if (read.runs().isEmpty() || all == null) {
            questions.tell(
                    "This study cannot be shown",
                    read.folder().path() + ": No run has a result yet. Run the study first.");
            return;
        }
        Region before = open().map(Open::before).orElseGet(frame::shown);
        StudyPart part = new StudyPart(new RunBoard(read.folder().study(), read.runs(), new Typeface()), all, theme);
        open = new Open(read.folder(), part, before);
        frame.show(part.node());
        frame.pages().markNone();
        frame.pages().onAgain(this::leave);
        part.node().requestFocus();
        part.refresh();
    }

    private void compare(Open now) {
        List<Integer> chosen = now.part.board().chosen().get();
        Checker checker = session.checker();
        work.start(
                "Comparing runs",
                () -> {
                    List<Compared> compared = new ArrayList<>();
                    for (int run : chosen) {
                        compared.add(Compared.of(now.part.board().result(run), now.folder.layout(run), checker));
                    }
                    return new StudyDocuments(program).comparisonPages(now.folder.study(), compared);
                },
                (Consumer<List<Drawing>>) now.part::showComparison,
                failure -> questions.tell("The runs cannot be compared", FailureWords.of(failure)));
    }

    private void layout(Open now) {
        int run = now.part.board().chosen().get().get(0);
        work.start(
                "Opening a run",
                () -> now.folder.layout(run),
                layout -> files.whenSafe(() -> opened(now, run, layout)),
                failure -> questions.tell("The run cannot be opened", FailureWords.of(failure)));
    }

    private void opened(Open now, int run, Layout layout) {
        String name = now.folder.study().study().id() + ", run " + run;
        if (files.show(new Opened(name, layout, Fingerprint.NONE, List.of()))) {
            leave();
            frame.pages().shown().set(Page.FIT_OUT);
        }
    }

    /** From a comparison to the runs, from the runs to the page that was there. */
    private void back() {
        open().ifPresent(now -> {
            if (now.part.comparing()) {
                now.part.showRuns();
            } else {
                leave();
            }
        });
    }

    private void leave() {
        open().filter(now -> frame.shown() == now.part.node()).ifPresent(now -> {
            frame.show(now.before);
            frame.pages().mark();
        });
        open = null;
    }

    /** What is open, for tests. */
    Optional<StudyPart> part() {
        return open().map(Open::part);
    }
}
