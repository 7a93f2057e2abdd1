package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.transport.JourneySession;

/** What can be done with the frame: finding commands, turning pages, the lists of changes and of keys. */
final class FrameCommands {
    private final DeskFrame frame;
    private final Commands commands;
    private final KeyMap keys;
    private final Session session;
    private final JourneySession journey;
    private final PreferencesFile preferences;

    FrameCommands(DeskFrame frame, Reach reach, Session session, JourneySession journey, PreferencesFile preferences) {
        this.frame = frame;
        commands = reach.commands();
        keys = reach.keys();
        this.session = session;
        this.journey = journey;
        this.preferences = preferences;
    }

    /** @param theme of what is drawn in the first steps */
    void add(Theme theme) {
        commands.add(new Command(
                "desk.first-steps",
                "First steps",
                List.of("help", "tour", "begin"),
                List.of("Shift+F1"),
                Optional::empty,
                () -> FirstSteps.open(frame.over(), theme)));
        commands.add(Command.of(
                "desk.find-command",
                "Find a command",
                List.of("Ctrl+Space"),
                () -> frame.field().open()));
        for (Page page : Page.values()) {
            commands.add(Command.of(
                    "desk.page-" + page.number(),
                    "Turn to " + page.title(),
                    List.of("Ctrl+" + page.number()),
                    () -> frame.pages().shown().set(page)));
        }
        commands.add(new Command(
                "desk.history",
                "List the changes",
                List.of("history", "undo"),
                List.of("Ctrl+H"),
                () -> session.now().history().canUndo()
                                || session.now().history().canRedo()
                        ? Optional.empty()
                        : Optional.of("Nothing was changed yet."),
                () -> new HistoryPage(() -> session.now().history(), session::undo, session::redo).open(frame.over())));
        commands.add(new Command(
                "journey.history",
                "List the changes of the journey",
                List.of("history", "undo"),
                List.of(),
                () -> journey.now()
                        .filter(now -> now.history().canUndo() || now.history().canRedo())
                        .map(now -> Optional.<String>empty())
                        .orElse(Optional.of("Nothing was changed yet.")),
                () -> new HistoryPage(() -> journey.now().orElseThrow().history(), journey::undo, journey::redo)
                        .open(frame.over())));
        commands.add(new Command(
                "desk.keys",
                "List the keys",
                List.of("help", "shortcut", "rebind"),
                List.of("F1"),
                Optional::empty,
                () -> new KeysPage(commands, keys, chosen -> preferences.change(now -> now.withKeys(chosen)))
                        .open(frame.over())));
    }
}
