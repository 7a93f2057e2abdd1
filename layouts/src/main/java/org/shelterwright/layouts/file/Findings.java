package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Problem;

/** What checks at the door found: problems that forbid going on, and doubts that a person should look at. */
public final class Findings {
    private static final int MOST = 20;

    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> doubts = new ArrayList<>();

    Findings() {}

    public List<Problem> problems() {
        return Collections.unmodifiableList(problems);
    }

    public List<Problem> doubts() {
        return Collections.unmodifiableList(doubts);
    }

    /**
     * Goes on if there is no problem.
     *
     * @throws InputException with all problems otherwise
     */
    public void requireUsable() {
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    /** Whether enough was found to tell; more would hide the first ones. */
    boolean full() {
        return problems.size() >= MOST;
    }

    void refuse(Places at, String sentence) {
        if (full()) {
            return;
        }
        problems.add(new Problem(at.text(), sentence));
    }

    void doubt(Places at, String sentence) {
        doubts.add(new Problem(at.text(), sentence));
    }
}
