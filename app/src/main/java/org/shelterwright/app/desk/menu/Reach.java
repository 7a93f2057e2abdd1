package org.shelterwright.app.desk.menu;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;

/**
 * What buttons and lists of commands need.
 *
 * @param commands all commands; looked up when they are shown, since parts add theirs late
 * @param keys the keys that commands have now
 * @param refused is told why a command could not be done; nothing, if it could
 */
public record Reach(Commands commands, KeyMap keys, Consumer<String> refused) {
    /** The command that is done where this one is asked for. */
    public Optional<Command> command(String id) {
        return commands.inPlaceOf(id);
    }

    /** Does a command, or tells why not. */
    public void run(String id) {
        refused.accept(commands.run(id).orElse(""));
    }

    /** A command's name with its first key, as in "Undo (Ctrl+Z)". */
    public String named(Command command) {
        List<String> written = keys.keys(command);
        return written.isEmpty() ? command.name() : command.name() + " (" + written.get(0) + ")";
    }
}
