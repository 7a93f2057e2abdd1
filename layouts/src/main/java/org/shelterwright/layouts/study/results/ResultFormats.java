package org.shelterwright.layouts.study.results;

import org.shelterwright.catalog.json.JsonFormat;

/** The formats of the lines of a results file: its first line, and one for each run. */
public final class ResultFormats {
    public static final JsonFormat<ResultsHead> HEAD =
            JsonFormat.of("shelterwright-study-results", 1, ResultsHead.class);
    public static final JsonFormat<RunResult> RUN = JsonFormat.of("shelterwright-study-run", 1, RunResult.class);

    private ResultFormats() {}
}
