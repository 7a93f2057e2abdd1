package org.shelterwright.app.desk.window;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Writes what was pressed as the commands write keys: "Ctrl+Shift+Z". */
final class Keystroke {
    private static final Map<KeyCode, String> SIGNS = Map.of(
            KeyCode.PLUS, "Plus",
            KeyCode.ADD, "Plus",
            KeyCode.MINUS, "Minus",
            KeyCode.SUBTRACT, "Minus",
            KeyCode.EQUALS, "Equals",
            KeyCode.PERIOD, "Period",
            KeyCode.COMMA, "Comma",
            KeyCode.SPACE, "Space");

    private Keystroke() {}

    /** Whether keys, as commands write them, can be pressed at all. */
    static boolean exists(String keys) {
        String key = keys.substring(keys.lastIndexOf('+') + 1);
        return SIGNS.containsValue(key)
                || Arrays.stream(KeyCode.values())
                        .anyMatch(code -> code.getName().equals(key));
    }

    /** The keys; empty while only a modifier is held. */
    static Optional<String> of(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code.isModifierKey() || code == KeyCode.UNDEFINED) {
            return Optional.empty();
        }
        String key = SIGNS.getOrDefault(code, code.getName());
        return Optional.of((event.isShortcutDown() ? "Ctrl+" : "")
                + (event.isAltDown() ? "Alt+" : "")
                + (event.isShiftDown() ? "Shift+" : "")
                + key);
    }
}
