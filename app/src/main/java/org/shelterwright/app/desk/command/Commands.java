package org.shelterwright.app.desk.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All commands, by id, in the order in which they were added. */
public final class Commands {
    private final Map<String, Command> commands = new LinkedHashMap<>();
    private Map<String, String> instead = Map.of();

    /**
     * Adds a command.
     *
     * @throws IllegalArgumentException if its id is taken
     */
    public void add(Command command) {
        if (commands.putIfAbsent(command.id(), command) != null) {
            throw new IllegalArgumentException("There are two commands \"" + command.id() + "\".");
        }
    }

    public void addAll(Collection<Command> more) {
        more.forEach(this::add);
    }

    public List<Command> all() {
        return List.copyOf(commands.values());
    }

    /** All commands, first those that can be done now. */
    public List<Command> ableFirst() {
        List<Command> able = new ArrayList<>();
        List<Command> others = new ArrayList<>();
        commands.values().forEach(command -> (command.obstacle().get().isEmpty() ? able : others).add(command));
        able.addAll(others);
        return able;
    }

    public Optional<Command> byId(String id) {
        return Optional.ofNullable(commands.get(id));
    }

    /**
     * Sets which commands are done in place of others, such as undoing in the journey in place of undoing in the layout while a page of
     * the journey is shown.
     *
     * @param others ids of what is done, by the ids of what is asked for
     */
    public void putInstead(Map<String, String> others) {
        instead = Map.copyOf(others);
    }

    /** The command that is done where this one is asked for; empty if there is none. */
    public Optional<Command> inPlaceOf(String id) {
        return byId(instead.getOrDefault(id, id));
    }

    /** Does a command, or the one in its place, unless something is in its way: then the reason comes back. */
    public Optional<String> run(String id) {
        Command command =
                inPlaceOf(id).orElseThrow(() -> new IllegalArgumentException("There is no command " + id + "."));
        Optional<String> obstacle = command.obstacle().get();
        if (obstacle.isEmpty()) {
            command.action().run();
        }
        return obstacle;
    }

    /** Commands in whose name or words every typed word begins some word; those that match by name first. */
    public List<Command> find(String typed) {
        List<String> asked = List.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        List<Command> byName = new ArrayList<>();
        List<Command> byWords = new ArrayList<>();
        for (Command command : commands.values()) {
            if (matches(command.name(), asked)) {
                byName.add(command);
            } else if (matches(command.name() + " " + String.join(" ", command.words()), asked)) {
                byWords.add(command);
            }
        }
        byName.addAll(byWords);
        return byName;
    }

    private static boolean matches(String text, List<String> asked) {
        List<String> words = List.of(text.toLowerCase(Locale.ROOT).split("[\\s,-]+"));
        return asked.stream().allMatch(part -> words.stream().anyMatch(word -> word.startsWith(part)));
    }
}
