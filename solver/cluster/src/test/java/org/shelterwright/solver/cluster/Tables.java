package org.shelterwright.solver.cluster;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.study.results.ResultFormats;
import org.shelterwright.layouts.study.results.ResultsFile;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;

/** What stands in the results of a study while they come, and when all are there. */
final class Tables {
    private Tables() {}

    /** Lines of the results so far, with the head; 0 if there is no file yet. */
    static int lines(StudyFolder folder) {
        Path file = folder.path().resolve(StudyFolder.RESULTS);
        try {
            byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
            int lines = 0;
            for (byte one : bytes) {
                lines += one == '\n' ? 1 : 0;
            }
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every run as a line, in the order of the runs, with the places of all units and without the time it took. */
    static List<String> text(StudyFolder folder) {
        List<RunResult> runs = new ArrayList<>();
        ResultsFile.read(folder.path().resolve(StudyFolder.RESULTS), folder.study(), runs::add);
        runs.sort(Comparator.comparingInt(RunResult::run));
        return runs.stream()
                .map(run -> ResultFormats.RUN.canonical(run.withoutTime()))
                .toList();
    }
}
