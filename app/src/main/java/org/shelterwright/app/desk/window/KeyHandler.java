package org.shelterwright.app.desk.window;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.command.KeyMap;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.desk.space.Pointing;

/**
 * Turns keys into commands. Keys with Ctrl or Alt and F1 to F12 work everywhere, except those that edit text while a text
 * is being typed; single letters and arrows work only in the view, whose nodes carry the style class "middle", and not while a
 * drag takes them. Letters also work in lists of units, which carry the style class {@value #LETTERS}.
 */
final class KeyHandler {
    /** Style class of what has the units selected and no use for letters of its own. */
    static final String LETTERS = "letters";

    private static final Set<String> OF_TEXT = Set.of(
            "Ctrl+A", "Ctrl+C", "Ctrl+V", "Ctrl+X", "Ctrl+Z", "Ctrl+Y", "Ctrl+Shift+Z", "Delete", "Insert", "Esc");

    private static final Set<String> UNDOING = Set.of("Ctrl+Z", "Ctrl+Y", "Ctrl+Shift+Z");

    private final Commands commands;
    private final KeyMap keys;
    private final Consumer<String> refused;

    /** @param refused is told why a command could not be done; nothing, if it could */
    KeyHandler(Commands commands, KeyMap keys, Consumer<String> refused) {
        this.commands = commands;
        this.keys = keys;
        this.refused = refused;
    }

    void listenTo(Scene scene) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            Node list = openList();
            if (list != null) {
                // While a list is open, keys are its own, wherever the focus was left.
                event.consume();
                Event.fireEvent(list, event.copyFor(list, list));
            } else if (isWanted(event, scene.getFocusOwner(), false)) {
                run(event);
            }
        });
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (isWanted(event, scene.getFocusOwner(), true)) {
                run(event);
            }
        });
    }

    /** What an open list of commands takes keys with; {@code null} if none is open. */
    private static @Nullable Node openList() {
        return Window.getWindows().stream()
                .filter(ContextMenu.class::isInstance)
                .map(window -> ((ContextMenu) window).getSkin())
                .filter(Objects::nonNull)
                .map(skin -> skin.getNode())
                .findFirst()
                .orElse(null);
    }

    /** Esc goes first to whatever has the focus, and what is left of it to the window. */
    private static boolean isWanted(KeyEvent event, Node focus, boolean leftOver) {
        Optional<String> pressed = Keystroke.of(event);
        if (pressed.isEmpty() || pressed.get().equals("Esc") != leftOver) {
            return false;
        }
        if (focus instanceof TextInputControl && OF_TEXT.contains(pressed.get()) && !leftOver) {
            return UNDOING.contains(pressed.get()) && Entry.isAtRest(focus);
        }
        return KeyMap.worksEverywhere(pressed.get())
                || isInView(focus)
                || pressed.get().matches("(Shift\\+)?[A-Z]") && isLettered(focus);
    }

    private static boolean isLettered(@Nullable Node focus) {
        return focus != null && focus.getStyleClass().contains(LETTERS);
    }

    private static boolean isInView(Node focus) {
        if (focus instanceof TextInputControl) {
            return false;
        }
        for (Node node = focus; node != null; node = node.getParent()) {
            if (node.getStyleClass().contains(Pointing.STEERED)) {
                return false;
            }
            if (node.getStyleClass().contains("middle")) {
                return true;
            }
        }
        return false;
    }

    private void run(KeyEvent event) {
        Optional<Command> command = Keystroke.of(event).flatMap(keys::command);
        if (command.isPresent()) {
            event.consume();
            refused.accept(commands.run(command.get().id()).orElse(""));
        }
    }
}
