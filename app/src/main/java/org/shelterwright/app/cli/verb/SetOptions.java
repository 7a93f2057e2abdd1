package org.shelterwright.app.cli.verb;

import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Options of loading a problem of a published set. */
final class SetOptions {
    private static final double MOST_SECONDS = 86_400;
    private static final long MOST_MOVES = 1_000_000_000_000L;

    @Option(
            names = "--set",
            paramLabel = "FILE",
            required = true,
            description = "Set of loading problems, as text in the form of the OR-Library (thpack).")
    private String file = "";

    @Option(
            names = "--problem",
            paramLabel = "NUMBER",
            required = true,
            description = "Number of the problem in the set.")
    private int problem;

    @Option(
            names = "--seconds",
            paramLabel = "NUMBER",
            description = "Time to search, with a fraction if need be. The result then depends on the machine.")
    private @Nullable Double seconds;

    @Option(
            names = "--moves",
            paramLabel = "NUMBER",
            description = "Spaces to look at (" + LoadRequest.USUAL_MOVES + " if neither seconds nor moves are given).")
    private @Nullable Long moves;

    @Option(
            names = "--support",
            paramLabel = "full|none",
            converter = SupportName.class,
            description = {
                "full: the whole base of each piece rests on the floor or on others (if not given);",
                "none: pieces may hang."
            })
    private Support support = Support.FULL;

    /** Names of the kinds of support as they are typed. */
    static final class SupportName implements ITypeConverter<Support> {
        @Override
        public Support convert(String value) {
            return switch (value.strip().toLowerCase(Locale.ROOT)) {
                case "full" -> Support.FULL;
                case "none" -> Support.NONE;
                default -> throw new TypeConversionException("\"" + value + "\" is none of full, none.");
            };
        }
    }

    String file() {
        return file;
    }

    int problem() {
        return problem;
    }

    Support support() {
        return support;
    }

    LoadRequest request(LoadProblem of, long seed) {
        return LoadRequest.single(of, seed, budget());
    }

    private Budget budget() {
        Double time = seconds;
        Long tried = moves;
        if (time != null && !(time >= 0.001 && time <= MOST_SECONDS)) {
            throw new InputException("--seconds", "This is " + time + ", but must be from 0.001 to 86400.");
        }
        if (tried != null && (tried < 1 || tried > MOST_MOVES)) {
            throw new InputException("--moves", "This is " + tried + ", but must be from 1 to " + MOST_MOVES + ".");
        }
        return new Budget(
                time == null && tried == null ? Long.valueOf(LoadRequest.USUAL_MOVES) : tried,
                time == null ? null : Duration.ofNanos((long) (time * 1e9)));
    }
}
