package org.shelterwright.solver.study;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.file.JourneyDocument;
import org.shelterwright.layouts.file.LayoutDocument;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

/**
 * One run of a study as work for any machine: it names nothing that is not in it.
 *
 * @param run number of the run
 * @param start brief and parts, everything still to be placed; {@code null} if a journey is to be planned
 * @param journey with copies of all that its planning needs; {@code null} if a brief is to be fitted
 */
public record StudyJob(
        int run,
        long seed,
        long moves,
        @Nullable Layout start,
        @Nullable JourneyDocument journey) {
    public StudyJob {
        if ((start == null) == (journey == null)) {
            throw new IllegalArgumentException("A job holds either a layout to start with or a journey.");
        }
    }

    /** A fit. */
    public StudyJob(int run, long seed, long moves, Layout start) {
        this(run, seed, moves, start, null);
    }

    /**
     * A job as it stands in its line.
     *
     * @param start the layout to start with; {@code null} if a journey is to be planned
     * @param journey {@code null} if a brief is to be fitted
     */
    public record Document(
            int run,
            long seed,
            long moves,
            @Nullable LayoutDocument start,
            @Nullable JourneyDocument journey) {}

    private static final JsonFormat<Document> FORMAT = JsonFormat.of("shelterwright-study-job", 1, Document.class);

    /** The job as one line of JSON. */
    public String line() {
        Layout layout = start;
        return FORMAT.canonical(
                new Document(run, seed, moves, layout == null ? null : LayoutFiles.document(layout), journey));
    }

    /**
     * Reads a job.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static StudyJob of(String line) {
        Sourced<Document> read = FORMAT.open(new InputFile("job", line.getBytes(StandardCharsets.UTF_8)));
        Document job = read.value();
        LayoutDocument start = job.start();
        if ((start == null) == (job.journey() == null)) {
            throw new InputException("job", "The job must hold either \"start\" or \"journey\".");
        }
        return new StudyJob(
                job.run(),
                job.seed(),
                job.moves(),
                start == null ? null : LayoutFiles.layout(start, read.places().key("start")),
                job.journey());
    }
}
