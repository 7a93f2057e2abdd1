package org.shelterwright.solver.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

/** A process that is killed in the middle of a study loses only the runs that were in its hands. */
class KilledStudyTest {
    private static final SealedStudy STUDY = SmallStudy.of(5, 300);
    private static final int KILLED_AFTER = 8;

    /** Runs the study in a folder. */
    static final class Running {
        public static void main(String[] arguments) {
            Checker checker = SmallStudy.checker();
            new StudyRunner(checker, new StandardFitter(checker))
                    .run(StudyFolder.open(Path.of(arguments[0])), 2, progress -> {}, new StopSignal());
        }
    }

    @Test
    void aKilledStudyGoesOnWithoutDoingAnythingTwice(@TempDir Path folder) throws IOException, InterruptedException {
        StudyFolder killed = StudyFolder.prepare(folder.resolve("killed"), STUDY);
        Path file = killed.path().resolve(StudyFolder.RESULTS);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Running.class.getName(),
                        killed.path().toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        try {
            for (int i = 0; i < 6_000 && process.isAlive() && lines(file) <= KILLED_AFTER; i++) {
                Thread.sleep(10);
            }
        } finally {
            process.destroyForcibly().waitFor(30, TimeUnit.SECONDS);
        }
        byte[] left = Files.readAllBytes(file);
        List<RunResult> before = killed.table();
        assertThat(before).as(Files.readString(folder.resolve("log"))).hasSizeBetween(KILLED_AFTER, 39);

        run(killed);
        StudyFolder whole = StudyFolder.prepare(folder.resolve("whole"), STUDY);
        run(whole);

        assertThat(table(killed)).hasSize(40).isEqualTo(table(whole));
        int sound = lastNewline(left) + 1;
        assertThat(Arrays.copyOf(Files.readAllBytes(file), sound))
                .as("what was done before the kill stands as it was")
                .isEqualTo(Arrays.copyOf(left, sound));
        assertThat(lines(file)).isEqualTo(41);
    }

    private static void run(StudyFolder folder) {
        Checker checker = SmallStudy.checker();
        new StudyRunner(checker, new StandardFitter(checker)).run(folder, 2, progress -> {}, new StopSignal());
    }

    private static List<RunResult> table(StudyFolder folder) {
        return folder.table().stream().map(RunResult::withoutTime).toList();
    }

    private static int lastNewline(byte[] bytes) {
        int at = bytes.length - 1;
        while (at >= 0 && bytes[at] != '\n') {
            at--;
        }
        return at;
    }

    private static long lines(Path file) throws IOException {
        if (!Files.exists(file)) {
            return 0;
        }
        byte[] bytes = Files.readAllBytes(file);
        long lines = 0;
        for (byte one : bytes) {
            lines += one == '\n' ? 1 : 0;
        }
        return lines;
    }
}
