package org.shelterwright.app.desk.window;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/** The pages, along the job. */
enum Page {
    FIT_OUT("Fit-out", 1),
    TRANSPORT("Transport", 2),
    BOLT_DOWN("Bolt-down", 3);

    private static final String ORDER = "boltdown.order";

    /** Without an order hardly anything can be said of bolting down, and that is not good news. */
    private static final Standing NO_ORDER = new Standing(null, "no order yet");

    private final String title;
    private final int number;

    Page(String title, int number) {
        this.title = title;
        this.number = number;
    }

    /** The page on which the limits of a subject count. */
    static Page of(Subject subject) {
        return switch (subject) {
            case TRANSPORT, LIFTING -> TRANSPORT;
            case BOLT_DOWN -> BOLT_DOWN;
            case FIT, ACCESS, MASS, FLOOR, AXLES, STABILITY, RESTRAINT, CABLES, POWER, HEAT, RACKS, STOWAGE -> FIT_OUT;
        };
    }

    /** Its place on the line, from 1. */
    int number() {
        return number;
    }

    /** @param verdict the worst of the page's limits; {@code null} if none is checked */
    record Standing(@Nullable Verdict verdict, String words) {}

    String title() {
        return title;
    }

    Standing standing(Ledger ledger) {
        Standing standing = standing(ledger, row -> of(row.subject()) == this && !row.doesNotApply());
        boolean ordered = ledger.rows().stream().anyMatch(row -> row.limit().equals(ORDER) && !row.doesNotApply());
        return this == BOLT_DOWN && standing.verdict() == Verdict.MET && !ordered ? NO_ORDER : standing;
    }

    /** The standing of a page that has a ledger of its own. */
    static Standing ofAll(Ledger ledger) {
        return standing(ledger, row -> true);
    }

    private static Standing standing(Ledger ledger, Predicate<Row> counted) {
        Verdict worst = null;
        int count = 0;
        for (Row row : ledger.rows()) {
            if (counted.test(row)) {
                boolean worse = worst == null || row.verdict().compareTo(worst) < 0;
                count = worse ? 1 : count + (row.verdict() == worst ? 1 : 0);
                worst = worse ? row.verdict() : worst;
            }
        }
        if (worst == null) {
            return new Standing(null, "not checked yet");
        }
        return new Standing(worst, worst == Verdict.MET ? "all met" : count + " " + worst.word());
    }
}
