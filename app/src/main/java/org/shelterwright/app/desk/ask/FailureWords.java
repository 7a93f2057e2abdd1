package org.shelterwright.app.desk.ask;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.Problem;

/** What people are told when something failed or is in doubt. */
public final class FailureWords {
    private static final int SHOWN = 3;

    private FailureWords() {}

    /** The first sentences of what is wrong with an input, with the number of the others; else what the failure says. */
    public static String of(Exception failure) {
        return failure instanceof InputException input ? of(input.problems()) : String.valueOf(failure.getMessage());
    }

    /** The first sentences of what was found, with the number of the others. */
    public static String of(List<Problem> problems) {
        List<String> lines = new ArrayList<>();
        problems.stream().limit(SHOWN).forEach(problem -> lines.add(problem.text()));
        if (problems.size() > SHOWN) {
            lines.add("... and " + (problems.size() - SHOWN) + " more.");
        }
        return String.join("\n", lines);
    }
}
