package org.shelterwright.layouts.study.results;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.study.Found;

/**
 * What came of one run. All but the time is the same whenever and wherever the run is done.
 *
 * @param run number of the run, from 1
 * @param settings ids of the settings by the ids of their axes, in the order of the axes
 * @param verdict worst verdict of the ledger; broken if the run was refused
 * @param counts how many rows have which verdict
 * @param governing the limit that is broken most, or else used most; {@code null} if none is assessed
 * @param measures figures of the layout
 * @param wishes how far the wishes are missed, as the search counts it
 * @param moves moves that the search tried
 * @param seconds time that the run took (s)
 * @param refused why nothing could be laid out with these settings; {@code null} if it could
 * @param found where everything is; {@code null} if this is not kept, or there is nothing
 */
public record RunResult(
        int run,
        Map<String, String> settings,
        long seed,
        Verdict verdict,
        Counts counts,
        @Nullable Governing governing,
        RunMeasures measures,
        long wishes,
        long moves,
        double seconds,
        @Nullable String refused,
        @Nullable Found found) {
    public RunResult {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        if (run < 1) {
            throw new IllegalArgumentException("The number of a run, " + run + ", must be at least 1.");
        }
    }

    /** How many rows of a ledger have which verdict. */
    public record Counts(long broken, long close, long notAssessed, long met) {
        static final Counts NONE = new Counts(0, 0, 0, 0);
    }

    /** The result of a run whose settings no layout can follow. */
    public static RunResult refused(int run, Map<String, String> settings, long seed, String why) {
        return new RunResult(
                run, settings, seed, Verdict.BROKEN, Counts.NONE, null, RunMeasures.NONE, 0, 0, 0, why, null);
    }

    /** Whether every limit was assessed and holds. */
    public boolean allMet() {
        return refused == null && counts.broken() == 0 && counts.notAssessed() == 0;
    }

    /** The same without what depends on the machine and its load. */
    public RunResult withoutTime() {
        return with(0, found);
    }

    /** The same without the places of units, for tables. */
    public RunResult withoutFound() {
        return with(seconds, null);
    }

    private RunResult with(double otherSeconds, @Nullable Found other) {
        return new RunResult(
                run, settings, seed, verdict, counts, governing, measures, wishes, moves, otherSeconds, refused, other);
    }
}
