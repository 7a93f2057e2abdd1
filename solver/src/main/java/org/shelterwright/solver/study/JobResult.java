package org.shelterwright.solver.study;

import java.nio.charset.StandardCharsets;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.layouts.study.Found;

/**
 * What a job found, which whoever asked checks from scratch, and the effort.
 *
 * @param run number of the run
 * @param found {@link Found#NONE} if nothing could be placed
 * @param wishes how far the wishes are missed, as the search counts it
 * @param moves moves tried
 * @param seconds time taken (s)
 */
public record JobResult(int run, Found found, long wishes, long moves, double seconds) {
    private static final JsonFormat<JobResult> FORMAT =
            JsonFormat.of("shelterwright-study-job-result", 1, JobResult.class);

    /** The result as one line of JSON. */
    public String line() {
        return FORMAT.canonical(this);
    }

    /**
     * Reads a result.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static JobResult of(String line) {
        return FORMAT.open(new InputFile("result of a job", line.getBytes(StandardCharsets.UTF_8)))
                .value();
    }
}
