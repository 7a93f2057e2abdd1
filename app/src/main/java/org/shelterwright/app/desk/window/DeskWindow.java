package org.shelterwright.app.desk.window;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.bolt.BoltPart;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.file.FiledLayout;
import org.shelterwright.app.desk.file.Filing;
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.app.desk.file.OpenedFile;
import org.shelterwright.app.desk.inside.InsideDesk;
import org.shelterwright.app.desk.inside.InsidePart;
import org.shelterwright.app.desk.ledger.JudgedLayout;
import org.shelterwright.app.desk.ledger.LedgerColumn;
import org.shelterwright.app.desk.ledger.Naming;
import org.shelterwright.app.desk.list.ListPart;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.search.Search;
import org.shelterwright.app.desk.search.SearchPart;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.StyleSheet;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.transport.JourneyPart;
import org.shelterwright.app.desk.unit.UnitPart;
import org.shelterwright.app.desk.wires.WiresPart;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.layout.Layout;

/** One window: the place where the parts of the desk are put together. For the window's thread. */
public final class DeskWindow {
    private static final Logger LOG = Logger.getLogger(DeskWindow.class.getName());

    private final Clock clock = Clock.system(ZoneId.systemDefault());
    private final Theme theme = new Theme();
    private final Commands commands = new Commands();
    private final Notices notices = new Notices();
    private final Works works = new Works();
    private final Stage stage = new Stage();
    private final Workshop workshop;
    private final Opened opened;
    private final String first;
    private final PreferencesFile preferences;
    private final KeyMap keys;
    private final Questions questions;
    private final Person person;
    private final Session session;
    private final Filing<Layout> filing;
    private final FileCommands files;
    private final Search search;
    private final InsideDesk inside;
    private final Reach reach;
    private final MiddlePart middle;
    private final BoltPart bolt;
    private @Nullable StudyPage studies;
    private Consumer<String> refusing = sentence -> {};
    private final JourneyPart journey;

    /**
     * @param session holds what was opened
     * @param opened what it shows first
     * @param journey name of the journey that it turns to; empty: none
     */
    public DeskWindow(Workshop workshop, Session session, PreferencesFile preferences, Opened opened, String journey) {
        this(workshop, session, preferences, opened, journey, WindowQuestions::new);
    }

    /** @param asking makes what asks, for a window and its theme */
    DeskWindow(
            Workshop workshop,
            Session session,
            PreferencesFile preferences,
            Opened opened,
            String journey,
            BiFunction<Window, Theme, Questions> asking) {
        this.workshop = workshop;
        this.opened = opened;
        this.first = journey;
        this.preferences = preferences;
        questions = asking.apply(stage, theme);
        person = new KeptPerson(preferences);
        keys = new KeyMap(commands, preferences.now().keys());
        this.session = session;
        search = new Search(
                session,
                workshop.fitter().apply(session.checker()),
                works.searching(),
                workshop.version().number());
        inside = new InsideDesk(session);
        reach = new Reach(commands, keys, sentence -> refusing.accept(sentence));
        middle = new MiddlePart(session, reach, theme, new InsidePart(inside, commands, theme).node());
        bolt = new BoltPart(session, commands, works.ordering(), theme);
        filing = new Filing<>(
                new FiledLayout(session), OpenedFile.of(opened), works.keeping(), clock, preferences.folder());
        files = new FileCommands(workshop, session, filing, questions, preferences, works.asked(), person, notices);
        this.journey = new JourneyPart(
                workshop,
                commands,
                questions,
                person,
                new JourneyPart.Works(works.asked(), works.keeping(), works.loading()),
                preferences.folder(),
                theme,
                notices);
    }

    /**
     * Shows the window.
     *
     * @param closed called when it was closed and everything is on the disk
     */
    public void show(Runnable closed) {
        KeptLook.restore(theme, preferences);
        files.addTo(commands, this::turnTo, journey.file());
        EditCommands.add(commands, session);
        LookCommands.add(commands, theme);
        commands.add(Command.of("desk.close", "Close the window", List.of("Ctrl+Q"), () -> close(closed)));
        DeskFrame frame = new DeskFrame(reach, theme, notices);
        refusing = frame::refuse;
        new FrameCommands(frame, reach, session, journey.session(), preferences).add(theme);
        FitOutPage fitOut = fitOut();
        new ItemPage(frame.over(), session, theme, this::items).addTo(commands);
        new WhyNotHere(frame.over(), session, theme, middle).addTo(commands);
        studies = new StudyPage(
                frame,
                session,
                files,
                questions,
                works.asked(),
                theme,
                workshop.version().line());
        studies.addTo(commands);
        WiresPart wires = new WiresPart(
                session,
                commands,
                works.asked(),
                () -> List.copyOf(workshop.entries().get().cables()));
        commands.add(Command.of(
                "view.wires", "Show or hide the wires", List.of("F10"), () -> middle.turnBelow(wires.node())));
        new PieceSheet(frame.over(), session, inside, commands, theme).addTo(commands);
        KeptLook.keepColumns(fitOut.node(), preferences);
        middle.tellPointed(words -> frame.status().show("Pointer, mm", words));
        turnPages(frame, fitOut);
        Scene scene = new Scene(frame.root());
        StyleSheet.dress(scene, theme);
        new KeyHandler(commands, keys, frame::refuse).listenTo(scene);
        stage.setScene(scene);
        KeptLook.restoreWindow(stage, preferences);
        stage.setOnCloseRequest(event -> {
            event.consume();
            close(closed);
        });
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> tellOfFailure(frame, failure));
        new Following(frame, session, filing, journey, clock).start(stage, works.doing());
        stage.show();
        middle.takeFocus();
        if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
            notices.tell("This display draws no 3D (its graphics driver has no support for it), so the plan is shown.");
        }
        Platform.runLater(() -> session.answerBy(works.settling()));
        files.greet(opened);
        files.tellLeftovers();
        if (!first.isEmpty()) {
            turnTo(first);
        }
    }

    /** Turns to the page Transport with a journey. */
    private void turnTo(String name) {
        commands.run("desk.page-" + Page.TRANSPORT.number());
        journey.open(name);
    }

    /** Says to somebody who never worked here where to begin. */
    void welcome() {
        notices.offer(
                "New here? The first steps take ten minutes, and nothing is written to a file before you say so.",
                "First steps",
                () -> commands.run("desk.first-steps"));
    }

    /** The stage, for tests, as all below. */
    Stage stage() {
        return stage;
    }

    MiddlePart middle() {
        return middle;
    }

    BoltPart bolt() {
        return bolt;
    }

    /** The page of studies, for tests; {@code null} before the window is shown. */
    @Nullable
    StudyPage studies() {
        return studies;
    }

    JourneyPart journey() {
        return journey;
    }

    Commands commands() {
        return commands;
    }

    Session session() {
        return session;
    }

    Theme theme() {
        return theme;
    }

    private FitOutPage fitOut() {
        JudgedLayout judged = new JudgedLayout(session, filing.state().map(OnFile::ledger));
        LedgerColumn ledger = new LedgerColumn(judged, Naming.OF_LAYOUT, commands, questions, person, theme);
        UnitPart unit = new UnitPart(session, reach);
        return new FitOutPage(
                new ListPart(session, commands, this::items).node(),
                unit.node(),
                middle.node(),
                new SearchPart(session, commands, search, theme).node(),
                ledger.node(),
                theme);
    }

    /** Every item of the catalog that comes with the program. */
    private List<Item> items() {
        return List.copyOf(workshop.entries().get().items());
    }

    /** Pages that are not looked at first are made when they are turned to: they would delay the first picture. */
    private void turnPages(DeskFrame frame, FitOutPage fitOut) {
        Made<Region> transport = new Made<>(() -> new TransportPage(journey, fitOut.node(), theme).node());
        Made<Region> boltDown = new Made<>(() -> new BoltDownPage(bolt, fitOut.node(), theme).node());
        frame.pages().shown().addListener((observable, before, page) -> {
            bolt.show(page == Page.BOLT_DOWN);
            commands.putInstead(page == Page.TRANSPORT ? JourneyPart.INSTEAD : Map.of());
            frame.show(
                    switch (page) {
                        case FIT_OUT -> fitOut.node();
                        case TRANSPORT -> transport.get();
                        case BOLT_DOWN -> boltDown.get();
                    });
        });
        frame.show(fitOut.node());
    }

    /** An order that makes no sense for the layout says so in one sentence; all else is a fault of the program. */
    private void tellOfFailure(DeskFrame frame, Throwable failure) {
        if (failure instanceof IllegalArgumentException refusal) {
            frame.refuse(String.valueOf(refusal.getMessage()));
            return;
        }
        LOG.log(Level.SEVERE, "The desk failed.", failure);
        notices.show(
                "fault",
                "The program failed, which is its own fault and not yours: " + failure
                        + ". What is on the desk is still there; save it under another name, to be safe.",
                Map.of("Good", () -> {}));
    }

    private void close(Runnable closed) {
        files.whenSafe(() -> journey.whenSafe(() -> {
            KeptLook.keepWindow(stage, preferences);
            stage.hide();
            search.stop();
            journey.close();
            works.close();
            filing.close();
            closed.run();
        }));
    }
}
