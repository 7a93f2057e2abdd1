package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;

/** Undoing, doing again, and checking again. */
final class EditCommands {
    private EditCommands() {}

    static void add(Commands commands, Session session) {
        commands.add(new Command(
                "edit.undo",
                "Undo",
                List.of("back"),
                List.of("Ctrl+Z"),
                () -> session.now().history().canUndo() ? Optional.empty() : Optional.of("Nothing was changed yet."),
                session::undo));
        commands.add(new Command(
                "edit.redo",
                "Do again",
                List.of("redo"),
                List.of("Ctrl+Y", "Ctrl+Shift+Z"),
                () -> session.now().history().canRedo() ? Optional.empty() : Optional.of("Nothing was undone."),
                session::redo));
        commands.add(Command.of("edit.check", "Check every limit again", List.of("F5"), session::checkAgain));
    }
}
