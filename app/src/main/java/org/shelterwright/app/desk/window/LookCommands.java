package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.look.Ground;

/** Light or dark, and the size of text. */
final class LookCommands {
    private static final int STEP = 25;

    private LookCommands() {}

    static void add(Commands commands, Theme theme) {
        commands.add(new Command(
                "look.ground",
                "Change between light and dark",
                List.of("theme", "night"),
                List.of("Ctrl+Alt+D"),
                Optional::empty,
                () -> theme.ground().set(theme.ground().get() == Ground.LIGHT ? Ground.DARK : Ground.LIGHT)));
        commands.add(new Command(
                "look.larger",
                "Larger text",
                List.of("font", "size"),
                List.of("Ctrl+Plus", "Ctrl+Equals"),
                () -> theme.textPercent().get() < Theme.MOST_TEXT
                        ? Optional.empty()
                        : Optional.of("Text is at its largest, " + Theme.MOST_TEXT + " %."),
                () -> theme.textPercent().set(theme.textPercent().get() + STEP)));
        commands.add(new Command(
                "look.smaller",
                "Smaller text",
                List.of("font", "size"),
                List.of("Ctrl+Minus"),
                () -> theme.textPercent().get() > Theme.LEAST_TEXT
                        ? Optional.empty()
                        : Optional.of("Text is at its smallest, " + Theme.LEAST_TEXT + " %."),
                () -> theme.textPercent().set(theme.textPercent().get() - STEP)));
    }
}
