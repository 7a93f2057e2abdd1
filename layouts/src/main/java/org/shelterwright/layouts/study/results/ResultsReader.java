package org.shelterwright.layouts.study.results;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyPlan;

/** Reads a results file and holds every line against the study. */
final class ResultsReader {
    private final Path file;
    private final ResultsHead head;
    private final StudyPlan plan;
    private final Map<Integer, Integer> lines = new HashMap<>();

    ResultsReader(Path file, SealedStudy study) {
        this.file = file;
        this.head = ResultsHead.of(study);
        this.plan = study.plan();
    }

    /**
     * Reads all results. A last line that was not written to its end is left out: its run is done again.
     *
     * @param each takes them in the order of the file
     * @return how far the file is sound (bytes); 0 if not even its head is whole
     * @throws InputException if a line is wrong, or the results are of another study
     */
    long read(Consumer<RunResult> each) {
        try (LineFile in = LineFile.open(file)) {
            if (in.advance()) {
                requireSame(line(ResultFormats.HEAD, in));
                while (in.advance()) {
                    RunResult result = line(ResultFormats.RUN, in);
                    requireOfPlan(result, in);
                    each.accept(result);
                }
            }
            return in.position();
        }
    }

    private static <T> T line(JsonFormat<T> format, LineFile in) {
        try {
            return format.open(new InputFile(in.where(), in.content())).value();
        } catch (InputException e) {
            throw new InputException(
                    in.where(),
                    e.problems().get(0).sentence()
                            + (in.line() == 1 ? "" : " Remove the line, and its run is done again."));
        }
    }

    private void requireSame(ResultsHead found) {
        if (!found.equals(head)) {
            throw new InputException(
                    file.toString(),
                    "These are results of "
                            + (found.study().equals(head.study())
                                    ? "the study \"" + found.study() + "\" as it was otherwise"
                                    : "the study \"" + found.study() + "\", not of \"" + head.study() + "\"")
                            + ". They are left as they are: name another folder.");
        }
    }

    private void requireOfPlan(RunResult result, LineFile in) {
        String where = in.where();
        int run = result.run();
        if (run > plan.count()) {
            throw new InputException(where, "This is of run " + run + ", but the study has " + plan.count() + " runs.");
        }
        StudyPlan.Run planned = plan.run(run);
        if (planned.seed() != result.seed() || !planned.ids().equals(result.settings())) {
            throw new InputException(
                    where, "This is of run " + run + " with other settings or another seed than the study gives it.");
        }
        Integer before = lines.putIfAbsent(run, in.line());
        if (before != null) {
            throw new InputException(
                    where, "Run " + run + " is there twice, first in line " + before + ". Remove one of the lines.");
        }
    }
}
