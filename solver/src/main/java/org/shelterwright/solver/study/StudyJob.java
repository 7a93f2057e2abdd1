package org.shelterwright.solver.study;

import java.nio.charset.StandardCharsets;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.file.LayoutDocument;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

/**
 * One run of a study as work for any machine: it names nothing that is not in it.
 *
 * @param run number of the run
 * @param start brief and parts, everything still to be placed
 */
public record StudyJob(int run, long seed, long moves, Layout start) {
    /**
     * A job as it stands in its line.
     *
     * @param start the layout to start with
     */
    public record Document(int run, long seed, long moves, LayoutDocument start) {}

    private static final JsonFormat<Document> FORMAT = JsonFormat.of("shelterwright-study-job", 1, Document.class);

    /** The job as one line of JSON. */
    public String line() {
        return FORMAT.canonical(new Document(run, seed, moves, LayoutFiles.document(start)));
    }

    /**
     * Reads a job.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static StudyJob of(String line) {
        Sourced<Document> read = FORMAT.open(new InputFile("job", line.getBytes(StandardCharsets.UTF_8)));
        Document job = read.value();
        return new StudyJob(
                job.run(),
                job.seed(),
                job.moves(),
                LayoutFiles.layout(job.start(), read.places().key("start")));
    }
}
