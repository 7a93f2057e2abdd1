package org.shelterwright.app.desk.window;

import java.io.File;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Journeys;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.preferences.Preferences;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.preferences.UserFolder;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;

/** Starts the window toolkit and the window, and waits until the window is closed. */
public final class DeskStart {
    private static final String FIRST = "sample:river-post";
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private DeskStart() {}

    /**
     * Opens a window and waits until it is closed.
     *
     * @param name a layout, brief or journey: a file or {@code sample:NAME}; empty for what was open last, or else the first sample
     * @throws InputException if there is no display, or the file cannot be opened
     */
    public static void run(Workshop workshop, Optional<String> name) {
        DisplayCheck.require(System.getProperty("os.name", ""), System.getenv(), DisplayCheck::reachable);
        PreferencesFile preferences = new PreferencesFile(UserFolder.ofThisUser());
        boolean newcomer = preferences.now().equals(Preferences.NONE);
        CompletableFuture<Start> reading = CompletableFuture.supplyAsync(() -> read(workshop, name, preferences));
        startToolkit();
        try {
            Start start = reading.join();
            CountDownLatch closed = new CountDownLatch(1);
            CompletableFuture<Void> shown = new CompletableFuture<>();
            Platform.runLater(() -> {
                try {
                    DeskWindow window =
                            new DeskWindow(workshop, start.session(), preferences, start.opened(), start.journey());
                    window.show(closed::countDown);
                    if (newcomer) {
                        window.welcome();
                    }
                    shown.complete(null);
                } catch (RuntimeException | Error e) {
                    shown.completeExceptionally(e);
                }
            });
            shown.join();
            closed.await();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            Platform.exit();
        }
    }

    /** The session is made, and its ledger answered, while the toolkit starts; then it belongs to the window's thread. */
    private record Start(Session session, Opened opened, String journey) {}

    private static Start read(Workshop workshop, Optional<String> name, PreferencesFile preferences) {
        Checker checker = workshop.checker().get();
        Inputs inputs = new Inputs(() -> workshop.entries().get().catalog(), checker.ruleSets());
        Optional<String> journey = name.filter(Journeys::named);
        Opened opened = name.isPresent() && journey.isEmpty() ? inputs.toJudge(name.get()) : last(inputs, preferences);
        return new Start(Session.answeredElsewhere(checker, opened.layout()), opened, journey.orElse(""));
    }

    /** What was open last, if it can still be opened: nobody asked for it by name, so nobody is troubled if not. */
    private static Opened last(Inputs inputs, PreferencesFile preferences) {
        Optional<String> last = preferences.now().recent().stream()
                .filter(file -> new File(file).isFile() && !FileCommands.isJourney(file))
                .findFirst();
        try {
            return inputs.toJudge(last.orElse(FIRST));
        } catch (InputException e) {
            return inputs.toJudge(FIRST);
        }
    }

    private static void startToolkit() {
        // The toolkit warns of being on the class path, where this program keeps it on purpose.
        TOOLKIT.setLevel(Level.SEVERE);
        prepareToolkit();
        try {
            Platform.startup(() -> {
                Fonts.load();
                WarmUp.run();
            });
            Platform.setImplicitExit(false);
        } catch (RuntimeException e) {
            throw new InputException("desk", DisplayCheck.NONE);
        }
    }

    /** Settles how the toolkit draws, before it starts. What is set from outside stays. */
    public static void prepareToolkit() {
        // Without it, machines whose only graphics is software draw no 3D at all, and do not say so.
        set("prism.forceGPU", "true");
        // Text of coloured edges reads back what lies below every word: a fifth of each frame where graphics is
        // software.
        set("prism.lcdtext", "false");
    }

    private static void set(String property, String value) {
        if (System.getProperty(property) == null) {
            System.setProperty(property, value);
        }
    }
}
