package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.layouts.study.Study;
import org.shelterwright.layouts.study.results.RunResult;

/** The table of a study, with all columns. */
public final class StudyTable {
    private StudyTable() {}

    /** The runs in the order given. */
    public static Table of(Study study, List<RunResult> runs) {
        List<StudyColumn> columns = StudyColumn.of(study);
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (RunResult run : runs) {
            List<@Nullable Object> row = new ArrayList<>();
            columns.forEach(column -> row.add(column.cell().apply(run)));
            rows.add(row);
        }
        return new Table("Runs", columns.stream().map(StudyColumn::head).toList(), rows);
    }
}
