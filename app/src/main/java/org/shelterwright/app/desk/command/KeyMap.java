package org.shelterwright.app.desk.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which keys do what: those of the commands, or others that a person chose. Keys are written as "Ctrl+Shift+Z", the
 * modifiers in the order Ctrl, Alt, Shift.
 */
public final class KeyMap {
    private static final List<String> MODIFIERS = List.of("Ctrl", "Alt", "Shift");
    private static final Map<String, String> OTHER_NAMES =
            Map.of("Del", "Delete", "Escape", "Esc", "Return", "Enter", "Ins", "Insert");
    private static final Set<String> EVERYWHERE = Set.of("Esc", "Delete", "Insert");

    private final Commands commands;
    private final Map<String, List<String>> own = new LinkedHashMap<>();

    /** @param own keys that a person chose, by the id of the command; unknown ids do no harm */
    public KeyMap(Commands commands, Map<String, List<String>> own) {
        this.commands = commands;
        this.own.putAll(own);
    }

    /** The keys of a command; empty if none. */
    public List<String> keys(Command command) {
        return own.getOrDefault(command.id(), command.keys()).stream()
                .map(KeyMap::plain)
                .toList();
    }

    /** The command that keys do. A person's own choice goes before what another command had at first. */
    public Optional<Command> command(String keys) {
        String asked = plain(keys);
        Optional<Command> first = Optional.empty();
        for (Command command : commands.all()) {
            if (keys(command).contains(asked)) {
                if (own.containsKey(command.id())) {
                    return Optional.of(command);
                }
                first = first.isEmpty() ? Optional.of(command) : first;
            }
        }
        return first;
    }

    /** Gives a command keys, and takes them from whatever had them. */
    public void choose(Command command, String keys) {
        String chosen = plain(keys);
        for (Command other : commands.all()) {
            if (keys(other).contains(chosen)) {
                List<String> left = new ArrayList<>(keys(other));
                left.remove(chosen);
                own.put(other.id(), List.copyOf(left));
            }
        }
        own.put(command.id(), List.of(chosen));
    }

    /** Gives a command the keys again that it had at first. */
    public void reset(Command command) {
        own.remove(command.id());
    }

    /** What a person chose, by the id of the command. */
    public Map<String, List<String>> own() {
        return Map.copyOf(own);
    }

    /** Whether keys work wherever the focus is, not only in the view: those with Ctrl or Alt, F1 to F12, and a few. */
    public static boolean worksEverywhere(String keys) {
        String asked = plain(keys);
        return asked.contains("Ctrl+")
                || asked.contains("Alt+")
                || asked.matches("(Shift\\+)?F\\d+")
                || EVERYWHERE.contains(asked);
    }

    /** The one way in which keys are written. */
    static String plain(String keys) {
        List<String> parts = new ArrayList<>(List.of(keys.strip().split("\\s*\\+\\s*")));
        String key = parts.remove(parts.size() - 1);
        key = key.length() == 1 ? key.toUpperCase(Locale.ROOT) : key;
        List<String> ordered = new ArrayList<>(MODIFIERS);
        ordered.removeIf(modifier -> parts.stream().noneMatch(modifier::equalsIgnoreCase));
        ordered.add(OTHER_NAMES.getOrDefault(key, key));
        return String.join("+", ordered);
    }
}
