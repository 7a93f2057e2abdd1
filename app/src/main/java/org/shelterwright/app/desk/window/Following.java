package org.shelterwright.app.desk.window;

import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
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
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.layout.Layout;

/** Keeps the frame true to the layout and its file, and looks now and then whether another has changed the file. */
final class Following {
    private static final double HEARTBEAT_S = 3;

    private final DeskFrame frame;
    private final Session session;
    private final Filing<Layout> filing;
    private final FileCommands files;
    private final Clock clock;

    Following(DeskFrame frame, Session session, Filing<Layout> filing, FileCommands files, Clock clock) {
        this.frame = frame;
        this.session = session;
        this.filing = filing;
        this.files = files;
        this.clock = clock;
    }

    /** @param doing what is being done away from the window's thread */
    void start(Stage stage, ObservableValue<String> doing) {
        session.standing().addListener((observable, before, now) -> follow(stage));
        filing.state().addListener((observable, before, now) -> {
            follow(stage);
            tellReadOnly(now);
        });
        filing.changedOnDisk().addListener((observable, before, changed) -> tellOfChange(changed));
        doing.addListener((observable, before, now) -> frame.status().show("Doing", now));
        session.selection()
                .units()
                .addListener((observable, before, units) -> frame.status()
                        .show("Selected", StatusFacts.names(units, session.now().layout())));
        Timeline heartbeat = new Timeline(new KeyFrame(Duration.seconds(HEARTBEAT_S), event -> {
            filing.look();
            showFile();
        }));
        heartbeat.setCycleCount(Animation.INDEFINITE);
        heartbeat.play();
        stage.setOnHidden(event -> heartbeat.stop());
        follow(stage);
        tellReadOnly(filing.state().get());
    }

    private void follow(Stage stage) {
        Standing now = session.now();
        frame.refuse("");
        frame.pages().show(now.ledger());
        StatusFacts.show(frame.status(), now);
        if (!now.tryingOut()) {
            History<Layout> history = now.history();
            frame.showHistory(
                    history.canUndo(),
                    history.canUndo() ? history.undoNames().get(0) : "",
                    history.canRedo(),
                    history.canRedo() ? history.redoNames().get(0) : "");
            showFile();
            stage.setTitle(now.layout().brief().name()
                    + filing.state()
                            .get()
                            .file()
                            .map(path -> ", " + path.getFileName())
                            .orElse("")
                    + " - Shelterwright");
        }
    }

    private void showFile() {
        frame.band()
                .show(
                        session.now().layout().brief().name(),
                        SavedWords.of(filing.state().get(), filing.changesSinceSave(), Instant.now(clock)));
    }

    private void tellReadOnly(OnFile<Layout> file) {
        frame.notices().hide("read-only");
        String readOnly = file.readOnly();
        if (readOnly != null) {
            frame.notices().show("read-only", readOnly, Map.of("Good", () -> {}));
        }
    }

    private void tellOfChange(boolean changed) {
        frame.notices().hide("disk");
        if (changed) {
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put("Read it again", () -> files.whenSafe(files::readAgain));
            answers.put("Stay with what is here", filing::ignoreChange);
            frame.notices().show("disk", "The file was changed by another since it was read.", answers);
        }
    }
}
