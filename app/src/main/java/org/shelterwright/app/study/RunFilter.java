package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.study.results.RunResult;

/**
 * Which runs of a study are shown, and in which order.
 *
 * @param settings ids of the settings that are shown, by the id of their axis; of other axes all
 * @param verdicts words of the verdicts that are shown, see {@link #VERDICTS}; empty: all
 * @param by the column that orders; {@code null}: by run
 */
public record RunFilter(
        Map<String, List<String>> settings,
        Set<String> verdicts,
        @Nullable StudyColumn by,
        boolean descending) {
    /** Verdicts of runs, as they are typed; the last is that of a run without a layout. */
    public static final List<String> VERDICTS = List.of("met", "close", "not-assessed", "broken", "refused");

    /** Every run, by number. */
    public static final RunFilter ALL = new RunFilter(Map.of(), Set.of(), null, false);

    public RunFilter {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        settings.forEach((axis, ids) -> copy.put(axis, List.copyOf(ids)));
        settings = Collections.unmodifiableMap(copy);
        verdicts = Set.copyOf(verdicts);
    }

    /** The runs that are shown, in order. Runs without a value in the ordering column come last either way. */
    public List<RunResult> of(List<RunResult> runs) {
        List<RunResult> chosen = new ArrayList<>(runs.stream()
                .filter(run -> settings.entrySet().stream()
                        .allMatch(one -> one.getValue().contains(run.settings().get(one.getKey()))))
                .filter(run -> verdicts.isEmpty() || verdicts.contains(verdict(run)))
                .toList());
        StudyColumn column = by;
        if (column != null) {
            chosen.sort(order(column));
        } else if (descending) {
            chosen.sort(Comparator.comparingInt(RunResult::run).reversed());
        }
        return chosen;
    }

    /** The verdict of a run as it is typed. */
    public static String verdict(RunResult run) {
        return run.refused() != null ? "refused" : run.verdict().word().replace(' ', '-');
    }

    public RunFilter withSettings(Map<String, List<String>> others) {
        return new RunFilter(others, verdicts, by, descending);
    }

    public RunFilter withVerdicts(Set<String> others) {
        return new RunFilter(settings, others, by, descending);
    }

    /** @param column {@code null}: by run */
    public RunFilter ordered(@Nullable StudyColumn column, boolean greatestFirst) {
        return new RunFilter(settings, verdicts, column, greatestFirst);
    }

    private Comparator<RunResult> order(StudyColumn column) {
        Comparator<Object> values = (a, b) -> a instanceof Number x && b instanceof Number y
                ? Double.compare(x.doubleValue(), y.doubleValue())
                : a.toString().compareTo(b.toString());
        Comparator<Object> ordered = descending ? values.reversed() : values;
        return Comparator.comparing((RunResult run) -> column.cell().apply(run), Comparator.nullsLast(ordered));
    }
}
