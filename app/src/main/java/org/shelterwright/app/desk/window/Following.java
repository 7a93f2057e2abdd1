package org.shelterwright.app.desk.window;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.value.ObservableValue;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.shelterwright.app.desk.file.Filing;
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.desk.transport.JourneyPart;
import org.shelterwright.app.desk.transport.JourneyStanding;
import org.shelterwright.app.desk.transport.JourneyWork;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.layout.Layout;

/** Keeps the frame true to the layout and its file, and looks now and then whether another has changed the file. */
final class Following {
    private static final double HEARTBEAT_S = 3;

    private final DeskFrame frame;
    private final Session session;
    private final Filing<Layout> filing;
    private final JourneyPart journey;
    private final Clock clock;

    Following(DeskFrame frame, Session session, Filing<Layout> filing, JourneyPart journey, Clock clock) {
        this.frame = frame;
        this.session = session;
        this.filing = filing;
        this.journey = journey;
        this.clock = clock;
    }

    /** @param doing what is being done away from the window's thread */
    void start(Stage stage, ObservableValue<String> doing) {
        session.standing().addListener((observable, before, now) -> follow(stage));
        filing.state().addListener((observable, before, now) -> follow(stage));
        doing.addListener((observable, before, now) -> frame.status().show("Doing", now));
        session.selection().units().addListener((observable, before, units) -> showSelected());
        journey.session().standing().addListener((observable, before, now) -> follow(stage));
        journey.session().focus().addListener((observable, before, now) -> showJourney());
        journey.file().addListener((observable, before, now) -> follow(stage));
        frame.pages().shown().addListener((observable, before, now) -> follow(stage));
        Timeline heartbeat = new Timeline(new KeyFrame(Duration.seconds(HEARTBEAT_S), event -> {
            filing.look();
            journey.look();
            showFile();
        }));
        heartbeat.setCycleCount(Animation.INDEFINITE);
        heartbeat.play();
        stage.setOnHidden(event -> heartbeat.stop());
        follow(stage);
    }

    private void follow(Stage stage) {
        Standing now = session.now();
        frame.refuse("");
        frame.pages().show(now.ledger(), journey.rows());
        StatusFacts.show(frame.status(), now, !ofJourney());
        showSelected();
        showJourney();
        boolean tryingOut = ofJourney()
                ? journey.session().now().map(JourneyStanding::tryingOut).orElse(false)
                : now.tryingOut();
        if (!tryingOut) {
            History<?> history = ofJourney()
                    ? journey.session()
                            .now()
                            .<History<?>>map(JourneyStanding::history)
                            .orElse(History.of(""))
                    : now.history();
            frame.showHistory(
                    history.canUndo(),
                    history.canUndo() ? history.undoNames().get(0) : "",
                    history.canRedo(),
                    history.canRedo() ? history.redoNames().get(0) : "");
            showFile();
            stage.setTitle(name()
                    + (ofJourney()
                                    ? journeyFile().flatMap(OnFile::file)
                                    : filing.state().get().file())
                            .map(path -> ", " + path.getFileName())
                            .orElse("")
                    + " - Shelterwright");
        }
    }

    /** Whether the frame speaks of the journey: its page is shown, and one is open. */
    private boolean ofJourney() {
        return frame.pages().shown().get() == Page.TRANSPORT
                && journey.session().now().isPresent();
    }

    private Optional<OnFile<JourneyWork>> journeyFile() {
        return Optional.ofNullable(journey.file().getValue());
    }

    private String name() {
        return ofJourney()
                ? journey.session().now().orElseThrow().journey().name()
                : session.now().layout().brief().name();
    }

    private void showSelected() {
        frame.status()
                .show(
                        "Selected",
                        ofJourney()
                                ? ""
                                : StatusFacts.names(
                                        session.selection().units().get(),
                                        session.now().layout()));
    }

    private void showJourney() {
        boolean shown = ofJourney();
        journey.facts().forEach((fact, value) -> frame.status().show(fact, shown ? value : ""));
    }

    private void showFile() {
        frame.band()
                .show(
                        name(),
                        ofJourney()
                                ? journeyFile()
                                        .map(file ->
                                                SavedWords.of(file, journey.changesSinceSave(), Instant.now(clock)))
                                        .orElse("")
                                : SavedWords.of(filing.state().get(), filing.changesSinceSave(), Instant.now(clock)));
    }
}
