package org.shelterwright.app.desk.preferences;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Ground;

/**
 * What is remembered. Whatever is {@code null} was never chosen.
 *
 * @param textPercent size of text (%)
 * @param leftWidth width of the left column (px)
 * @param rightWidth width of the right column (px)
 * @param window where the window was
 * @param person who works here, as acceptances name him or her
 * @param recent files opened last, the latest first
 * @param keys keys that a person chose, by the id of the command
 */
public record Preferences(
        @Nullable Ground ground,
        @Nullable Integer textPercent,
        @Nullable Integer leftWidth,
        @Nullable Integer rightWidth,
        @Nullable WindowPlace window,
        @Nullable String person,
        List<String> recent,
        Map<String, List<String>> keys) {
    /** Nothing was ever chosen. */
    public static final Preferences NONE = new Preferences(null, null, null, null, null, null, List.of(), Map.of());

    private static final int MOST_RECENT = 9;

    /**
     * Where a window was, in pixels of the screen.
     *
     * @param full whether it filled the screen
     */
    public record WindowPlace(int x, int y, int width, int height, boolean full) {}

    public Preferences {
        recent = List.copyOf(recent);
        keys = Map.copyOf(keys);
    }

    public Preferences withLook(Ground otherGround, int otherText) {
        return new Preferences(otherGround, otherText, leftWidth, rightWidth, window, person, recent, keys);
    }

    public Preferences withColumns(int left, int right) {
        return new Preferences(ground, textPercent, left, right, window, person, recent, keys);
    }

    public Preferences withWindow(WindowPlace place) {
        return new Preferences(ground, textPercent, leftWidth, rightWidth, place, person, recent, keys);
    }

    public Preferences withPerson(String name) {
        return new Preferences(ground, textPercent, leftWidth, rightWidth, window, name, recent, keys);
    }

    public Preferences withKeys(Map<String, List<String>> chosen) {
        return new Preferences(ground, textPercent, leftWidth, rightWidth, window, person, recent, chosen);
    }

    /** Puts a file first among the recent ones. */
    public Preferences withRecent(String file) {
        List<String> files = Stream.concat(Stream.of(file), recent.stream().filter(other -> !other.equals(file)))
                .limit(MOST_RECENT)
                .toList();
        return new Preferences(ground, textPercent, leftWidth, rightWidth, window, person, files, keys);
    }
}
