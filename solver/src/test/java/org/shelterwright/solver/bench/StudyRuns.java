package org.shelterwright.solver.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyRunner;

/**
 * A study of 200 fits of a sample, each time in a process of its own: on one thread, on two, and on two with a kill -9 in the middle and
 * then to the end. The tables must be the same, and no run may be done twice but those in flight at the kill.
 */
final class StudyRuns {
    private static final int RUNS = 200;
    private static final int KILLED_AFTER = 90;
    private static final String SECONDS = "seconds.txt";
    private static final String LATER =
            "The time is up. Measure again: what is done is kept in target/measured-studies.";

    private final Setting setting;

    StudyRuns(Setting setting) {
        this.setting = setting;
    }

    /** Runs the study of a folder on some threads. */
    static final class Running {
        public static void main(String[] arguments) {
            Checker checker = Checker.standard();
            new StudyRunner(checker, new StandardFitter(checker))
                    .run(
                            StudyFolder.open(Path.of(arguments[0])),
                            Integer.parseInt(arguments[1]),
                            progress -> {},
                            new StopSignal());
        }
    }

    String run() {
        Machine machine = new Machine();
        try {
            Path folder = Files.createDirectories(Path.of("target", "measured-studies"));
            SealedStudy study = new StudyFiles(
                            BuiltInCatalog.read(), Checker.standard().ruleSets(), "measured")
                    .open(Samples.study("too-much"), null)
                    .study();
            Table table = new Table("run", "threads", "wall clock (s)", "jobs a minute", "runs done", "table");
            long end = setting.endNanos();
            StudyFolder one = StudyFolder.prepare(folder.resolve("one"), study);
            double seconds = timed(one, 1);
            List<RunResult> first = table(one);
            table.add("from beginning to end", 1, seconds, 60 * RUNS / seconds, first.size(), "the reference");
            if (System.nanoTime() > end) {
                return LATER;
            }
            StudyFolder two = StudyFolder.prepare(folder.resolve("two"), study);
            seconds = timed(two, 2);
            table.add("the same", 2, seconds, 60 * RUNS / seconds, table(two).size(), same(table(two), first));
            if (System.nanoTime() > end) {
                return LATER;
            }
            StudyFolder killed = StudyFolder.prepare(Files.createTempDirectory(folder, "killed"), study);
            String told = killed(killed, first, table);
            return """
                    # Two hundred fits: threads, and a kill in the middle

                    Written by the measurement `studies`. %d fits of the sample *Too Much* (24 units; with one bench and with two, two kinds
                    of batteries, 50 seeds, 1 000 moves each), each row in a process of its own, every result checked from scratch and
                    forced to the disk. Tables are compared run by run, in all but the time.

                    %s
                    Date: %s.

                    %s
                    %s
                    """.formatted(RUNS, machine.text(), setting.date(), table.text(), told);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String killed(StudyFolder folder, List<RunResult> first, Table table) throws IOException {
        Path file = folder.path().resolve(StudyFolder.RESULTS);
        long start = System.nanoTime();
        Process process = started(folder, 2);
        while (process.isAlive() && lines(file) <= KILLED_AFTER) {
            pause();
        }
        process.destroyForcibly();
        await(process);
        double before = (System.nanoTime() - start) / 1e9;
        byte[] left = Files.readAllBytes(file);
        int kept = folder.table().size();
        table.add("killed with -9 in the middle", 2, before, 60 * kept / before, kept, "a part of it");
        double seconds = toTheEnd(folder, 2);
        int more = folder.table().size() - kept;
        table.add("started again", 2, seconds, 60 * more / seconds, more, same(table(folder), first));
        byte[] after = Files.readAllBytes(file);
        int sound = sound(left);
        boolean unchanged = Arrays.equals(Arrays.copyOf(after, sound), Arrays.copyOf(left, sound));
        Set<Integer> numbers = new HashSet<>();
        table(folder).forEach(run -> numbers.add(run.run()));
        return "At the kill %d results were on the disk and %s; after it the file has %d lines: a head and %d runs, each once (%d different). Only the at most two runs in flight were done again."
                .formatted(
                        kept,
                        unchanged ? "stand there unchanged, byte for byte" : "**were changed**",
                        lines(file),
                        lines(file) - 1,
                        numbers.size());
    }

    /** Wall clock of a whole study; it is done once and its time kept beside it, so that the measurement can be taken in parts. */
    private static double timed(StudyFolder folder, int threads) throws IOException {
        Path kept = folder.path().resolve(SECONDS);
        if (Files.exists(kept)) {
            return Double.parseDouble(Files.readString(kept));
        }
        double seconds = toTheEnd(folder, threads);
        Files.writeString(kept, Double.toString(seconds));
        return seconds;
    }

    private static double toTheEnd(StudyFolder folder, int threads) throws IOException {
        long start = System.nanoTime();
        if (await(started(folder, threads)) != 0) {
            throw new IllegalStateException("The study in " + folder.path() + " failed.");
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private static Process started(StudyFolder folder, int threads) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Running.class.getName(),
                        folder.path().toString(),
                        Integer.toString(threads))
                .redirectErrorStream(true)
                .redirectOutput(folder.path().resolve("log").toFile())
                .start();
    }

    private static int await(Process process) {
        try {
            return process.waitFor();
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The measurement was interrupted.", e);
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(20);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static String same(List<RunResult> table, List<RunResult> first) {
        return table.equals(first) ? "the same" : "**another**";
    }

    private static List<RunResult> table(StudyFolder folder) {
        return folder.table().stream().map(RunResult::withoutTime).toList();
    }

    /** Length up to and with the last newline. */
    private static int sound(byte[] bytes) {
        int at = bytes.length;
        while (at > 0 && bytes[at - 1] != '\n') {
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
