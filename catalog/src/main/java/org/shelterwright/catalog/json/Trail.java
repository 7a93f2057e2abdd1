package org.shelterwright.catalog.json;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The way to a value in a file, such as {@code solids[1].box}, with the list that takes what is wrong there. */
final class Trail {
    /** Problems that are told at once; more would hide the first ones. */
    private static final int MOST = 20;

    private final String file;
    private final String path;
    private final List<Problem> problems;

    private Trail(String file, String path, List<Problem> problems) {
        this.file = file;
        this.path = path;
        this.problems = problems;
    }

    static Trail of(String file) {
        return new Trail(file, "", new ArrayList<>());
    }

    Trail key(String key) {
        return new Trail(file, path.isEmpty() ? key : path + "." + key, problems);
    }

    Trail index(int index) {
        return new Trail(file, path + "[" + index + "]", problems);
    }

    /** Where this is in words, such as {@code "solids[1].box"} in quotes, or {@code the file}. */
    String here() {
        return path.isEmpty() ? "the file" : "\"" + path + "\"";
    }

    boolean isRoot() {
        return path.isEmpty();
    }

    void tell(@Nullable Spot spot, String sentence) {
        if (problems.size() < MOST) {
            problems.add(new Problem(spot == null ? file : file + ", " + spot.text(), sentence));
        }
    }

    /** Tells that a value is not of the right sort; {@code wanted} ends "must be …". */
    void mismatch(Node node, String wanted) {
        tell(node.spot(), here() + " must be " + wanted + ", but is " + node.shown() + ".");
    }

    List<Problem> problems() {
        return problems;
    }
}
