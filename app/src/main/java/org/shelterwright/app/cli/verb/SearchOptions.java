package org.shelterwright.app.cli.verb;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import picocli.CommandLine.Option;

/** Options of a search. */
final class SearchOptions {
    private static final long MOST_MOVES = 1_000_000_000_000_000L;
    private static final int MOST_THREADS = 1_024;
    private static final int MOST_ALTERNATIVES = 50;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "Seed of the search (${DEFAULT-VALUE} if not given). Another seed searches elsewhere.")
    private long seed;

    @Option(
            names = "--moves",
            paramLabel = "NUMBER",
            description = "Moves to try (" + Budget.USUAL_MOVES + " if neither moves nor time are given).")
    private @Nullable Long moves;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeText.class,
            description = "Time to search, such as 90s, 2m or 1h. The result then depends on the machine.")
    private @Nullable Duration time;

    @Option(
            names = "--threads",
            paramLabel = "NUMBER",
            description = "Threads to search with (all processors if not given).")
    private @Nullable Integer threads;

    @Option(
            names = "--alternatives",
            paramLabel = "NUMBER",
            defaultValue = "3",
            description = "Truly different layouts that are wanted, the best included (${DEFAULT-VALUE} if not given).")
    private int alternatives;

    FitRequest request(Layout start) {
        Integer wanted = threads;
        int used = wanted == null ? Runtime.getRuntime().availableProcessors() : wanted;
        within("--threads", used, MOST_THREADS);
        within("--alternatives", alternatives, MOST_ALTERNATIVES);
        Long tried = moves;
        if (tried != null) {
            within("--moves", tried, MOST_MOVES);
        }
        boolean open = moves == null && time == null;
        return new FitRequest(
                start, seed, new Budget(open ? Long.valueOf(Budget.USUAL_MOVES) : moves, time), used, alternatives);
    }

    private static void within(String option, long value, long most) {
        if (value < 1 || value > most) {
            throw new InputException(option, "This is " + value + ", but must be from 1 to " + most + ".");
        }
    }
}
