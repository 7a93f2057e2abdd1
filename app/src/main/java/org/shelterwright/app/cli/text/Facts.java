package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Named facts, one a line, their values beneath each other; what is empty or not known is left out. */
final class Facts {
    private static final int NAME_WIDTH = 16;

    private final List<String> lines = new ArrayList<>();

    Facts title(String text) {
        lines.add(text);
        return this;
    }

    Facts add(String name, @Nullable String value) {
        if (value != null && !value.isEmpty()) {
            lines.add("  " + name + " ".repeat(Math.max(2, NAME_WIDTH - name.length())) + value);
        }
        return this;
    }

    /** One line for each of the things, the name on the first. */
    <T> Facts each(String name, List<T> things, Function<T, String> line) {
        String shown = name;
        for (T thing : things) {
            lines.add("  " + shown + " ".repeat(Math.max(2, NAME_WIDTH - shown.length())) + line.apply(thing));
            shown = "";
        }
        return this;
    }

    List<String> lines() {
        return lines;
    }
}
