package org.shelterwright.app.desk.window;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Duration;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.file.Filing;
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.app.desk.file.Recovery;
import org.shelterwright.app.desk.ledger.LedgerPart;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.desk.style.StyleSheet;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.History;

/** One window: the place where the parts of the desk are put together. */
public final class DeskWindow {
    private static final double HEARTBEAT_S = 3;

    private final Workshop workshop;
    private final PreferencesFile preferences;
    private final Clock clock = Clock.system(ZoneId.systemDefault());
    private final Theme theme = new Theme();
    private final Commands commands = new Commands();
    private final KeyMap keys;
    private final FxWork work = new FxWork();
    private final Stage stage = new Stage();
    private final Questions questions;
    private final Person person;
    private final Checker checker;

    public DeskWindow(Workshop workshop, Checker checker, PreferencesFile preferences) {
        this(workshop, checker, preferences, WindowQuestions::new);
    }

    /** @param questions makes what asks, for a window and its theme */
    DeskWindow(
            Workshop workshop,
            Checker checker,
            PreferencesFile preferences,
            BiFunction<Window, Theme, Questions> questions) {
        this.workshop = workshop;
        this.checker = checker;
        this.preferences = preferences;
        this.questions = questions.apply(stage, theme);
        this.person = new KeptPerson(preferences);
        this.keys = new KeyMap(commands, preferences.now().keys());
    }

    /**
     * Shows the window.
     *
     * @param closed called when it was closed and everything is on the disk
     */
    public void show(Opened opened, Runnable closed) {
        KeptLook.restore(theme, preferences);
        Session session = new Session(checker, opened.layout());
        Filing filing = new Filing(session, opened, work, clock, preferences.folder());
        EditCommands.add(commands, session);
        LookCommands.add(commands, theme);
        DeskFrame[] shown = new DeskFrame[1];
        FileCommands files = new FileCommands(
                workshop,
                session,
                filing,
                questions,
                preferences,
                work,
                person,
                sentence -> shown[0].notices().show("told", sentence, Map.of("Good", () -> {})),
                () -> settled(shown[0], session, filing));
        files.addTo(commands);
        DeskFrame frame = new DeskFrame(commands, keys, theme);
        shown[0] = frame;
        new FrameCommands(frame, commands, keys, session, preferences).add();
        FitOutPage fitOut = fitOut(session, filing);
        KeptLook.keepColumns(fitOut.node(), preferences);
        turnPages(frame, fitOut);
        watch(frame, session, filing, files);
        Scene scene = new Scene(frame.root());
        StyleSheet.dress(scene, theme);
        new KeyHandler(commands, keys, frame::refuse).listenTo(scene);
        stage.setScene(scene);
        KeptLook.restoreWindow(stage, preferences);
        stage.setOnCloseRequest(event -> {
            event.consume();
            files.whenSafe(() -> close(filing, closed));
        });
        stage.show();
        tellOf3d(frame);
        filing.state().get().file().ifPresent(files::remember);
        files.tellDoubts(opened);
        settled(frame, session, filing);
    }

    /** The stage, for tests. */
    Stage stage() {
        return stage;
    }

    /** Every command of this window, for tests. */
    Commands commands() {
        return commands;
    }

    Theme theme() {
        return theme;
    }

    private FitOutPage fitOut(Session session, Filing filing) {
        LedgerPart ledger = new LedgerPart(
                session, commands, questions, person, theme, filing.state().map(OnFile::ledger));
        return new FitOutPage(
                new EmptyPlace("list-place", "The equipment list comes here."),
                new EmptyPlace("unit-place", ""),
                new EmptyPlace("view-place", "The view comes here."),
                new EmptyPlace("search-place", "The search for places comes here. Until then use: shelterwright fit."),
                ledger.node(),
                theme);
    }

    private static void turnPages(DeskFrame frame, FitOutPage fitOut) {
        Region transport = new ComingPage(Page.TRANSPORT);
        Region boltDown = new ComingPage(Page.BOLT_DOWN);
        frame.pages()
                .shown()
                .addListener((observable, before, page) -> frame.show(
                        switch (page) {
                            case FIT_OUT -> fitOut.node();
                            case TRANSPORT -> transport;
                            case BOLT_DOWN -> boltDown;
                        }));
        frame.show(fitOut.node());
    }

    private void watch(DeskFrame frame, Session session, Filing filing, FileCommands files) {
        session.standing().addListener((observable, before, now) -> follow(frame, filing, now));
        filing.state().addListener((observable, before, now) -> follow(frame, filing, session.now()));
        work.doing().addListener((observable, before, now) -> frame.status().show("Doing", now));
        session.selection()
                .units()
                .addListener((observable, before, units) -> frame.status()
                        .show("Selected", StatusFacts.names(units, session.now().layout())));
        filing.changedOnDisk().addListener((observable, before, changed) -> {
            frame.notices().hide("disk");
            if (changed) {
                Map<String, Runnable> answers = new LinkedHashMap<>();
                answers.put("Read it again", () -> files.whenSafe(files::readAgain));
                answers.put("Stay with what is here", filing::ignoreChange);
                frame.notices().show("disk", "The file was changed by another since it was read.", answers);
            }
        });
        Timeline heartbeat = new Timeline(new KeyFrame(Duration.seconds(HEARTBEAT_S), event -> {
            filing.look();
            follow(frame, filing, session.now());
        }));
        heartbeat.setCycleCount(Animation.INDEFINITE);
        heartbeat.play();
        stage.setOnHidden(event -> heartbeat.stop());
        follow(frame, filing, session.now());
    }

    private void follow(DeskFrame frame, Filing filing, Standing now) {
        OnFile file = filing.state().get();
        String name = now.layout().brief().name();
        frame.band().show(name, SavedWords.of(file, filing.changesSinceSave(), Instant.now(clock)));
        frame.pages().show(now.ledger());
        History history = now.history();
        frame.showHistory(
                history.canUndo(),
                history.canUndo() ? history.undoNames().get(0) : "",
                history.canRedo(),
                history.canRedo() ? history.redoNames().get(0) : "");
        StatusFacts.show(frame.status(), now);
        stage.setTitle(name + file.file().map(path -> ", " + path.getFileName()).orElse("") + " - Shelterwright");
    }

    /** After a layout was opened: what is to be said of its file. */
    private void settled(DeskFrame frame, Session session, Filing filing) {
        frame.notices().hide("disk");
        frame.notices().hide("read-only");
        String readOnly = filing.state().get().readOnly();
        if (readOnly != null) {
            frame.notices().show("read-only", readOnly, Map.of("Good", () -> {}));
        }
        Optional<Recovery> found = filing.recovery();
        if (found.isPresent()) {
            Optional<Integer> answer = questions.choose(
                    "Unsaved work was found",
                    found.get().sentence(ZoneId.systemDefault(), LocalDate.now(clock)),
                    List.of("Take the unsaved work", "Drop it"));
            if (answer.equals(Optional.of(0))) {
                filing.takeRecovery();
            } else if (answer.equals(Optional.of(1))) {
                filing.dropRecovery();
            }
        }
        follow(frame, filing, session.now());
    }

    private static void tellOf3d(DeskFrame frame) {
        if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
            frame.notices()
                    .show(
                            "3d",
                            "This display draws no 3D (its graphics driver has no support for it), so the plan is shown.",
                            Map.of("Good", () -> {}));
        }
    }

    private void close(Filing filing, Runnable closed) {
        KeptLook.keepWindow(stage, preferences);
        stage.hide();
        Platform.runLater(() -> {
            work.close();
            filing.close();
            closed.run();
        });
    }
}
