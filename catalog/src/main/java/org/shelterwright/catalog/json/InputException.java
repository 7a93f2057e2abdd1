package org.shelterwright.catalog.json;

import java.util.List;
import java.util.stream.Collectors;

/** Input that cannot be used; nothing was changed. */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    public InputException(String where, String sentence) {
        this(List.of(new Problem(where, sentence)));
    }

    public List<Problem> problems() {
        return problems;
    }
}
