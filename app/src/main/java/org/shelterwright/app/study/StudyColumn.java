package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.study.Study;
import org.shelterwright.layouts.study.results.Governing;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;

/**
 * A column of the table of a study.
 *
 * @param id as it is named to choose it
 * @param head its head, with its unit
 * @param figures whether its cells are figures
 * @param cell a text, a number, or {@code null} if there is nothing to say
 */
public record StudyColumn(String id, String head, boolean figures, Function<RunResult, @Nullable Object> cell) {
    /** All columns of a study: run, one for each axis, seed, verdict, governing limit, measures. */
    public static List<StudyColumn> of(Study study) {
        List<StudyColumn> columns = new ArrayList<>();
        columns.add(new StudyColumn("run", "run", true, RunResult::run));
        study.axes()
                .forEach(axis -> columns.add(new StudyColumn(
                        axis.id(), axis.id(), false, run -> run.settings().get(axis.id()))));
        columns.add(new StudyColumn("seed", "seed", true, RunResult::seed));
        columns.add(new StudyColumn(
                "verdict",
                "verdict",
                false,
                run -> run.refused() == null ? run.verdict().word() : "refused"));
        columns.add(count("broken", run -> run.counts().broken()));
        columns.add(count("close", run -> run.counts().close()));
        columns.add(count("not-assessed", run -> run.counts().notAssessed()));
        columns.add(count("met", run -> run.counts().met()));
        columns.add(governing("limit", "governing limit", false, Governing::limit));
        columns.add(governing("limited", "what it limits", false, Governing::title));
        columns.add(governing("state", "load state", false, Governing::state));
        columns.add(governing("demand", "demand", true, Governing::demand));
        columns.add(governing("capacity", "capacity", true, Governing::capacity));
        columns.add(governing("margin", "margin", true, Governing::margin));
        columns.add(governing("unit", "unit", false, Governing::unit));
        for (Measure measure : Measure.values()) {
            if (columns.stream().noneMatch(one -> one.id().equals(measure.id()))) {
                columns.add(measure(measure));
            }
        }
        columns.add(new StudyColumn("moves", "moves", true, run -> run.refused() == null ? run.moves() : null));
        columns.add(new StudyColumn("refused", "why refused", false, RunResult::refused));
        return columns;
    }

    private static StudyColumn count(String id, Function<RunResult, Object> count) {
        return new StudyColumn(id, id.replace('-', ' '), true, run -> run.refused() == null ? count.apply(run) : null);
    }

    private static StudyColumn governing(String id, String head, boolean figures, Function<Governing, Object> part) {
        return new StudyColumn(id, head, figures, run -> {
            Governing governing = run.governing();
            return governing == null ? null : part.apply(governing);
        });
    }

    private static StudyColumn measure(Measure measure) {
        String unit = measure.unit().isEmpty() ? "" : " (" + measure.unit() + ")";
        return new StudyColumn(measure.id(), measure.id().replace('-', ' ') + unit, true, run -> {
            var value = measure.of(run);
            return value.isPresent() ? (Object) value.getAsDouble() : null;
        });
    }
}
