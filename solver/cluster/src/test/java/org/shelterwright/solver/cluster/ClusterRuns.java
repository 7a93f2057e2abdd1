package org.shelterwright.solver.cluster;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.Study;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;

/**
 * Measures a study on a standalone cluster on loopback, with authentication and encryption on: jobs a minute with one worker and with
 * two, what each job costs beside its own work, and what the driver spends; and plans a cluster of 1 000 cores from it.
 */
public final class ClusterRuns {
    private static final int CORES = 1_000;
    private static final int SEEDS = 15;
    private static final String SECRET = "of this measurement alone";

    private ClusterRuns() {}

    /**
     * What one cluster did between its first result and its last.
     *
     * @param meanSeconds mean time of a job on its worker, as it says itself
     * @param driverMs processor time of the driver for each job
     */
    private record Measured(
            int workers,
            double startSeconds,
            int jobs,
            double seconds,
            double meanSeconds,
            double driverMs,
            List<RunResult> table) {
        double jobsAMinute() {
            return 60 * jobs / seconds;
        }

        double overheadMs() {
            return 1000 * (workers * seconds / jobs - meanSeconds);
        }
    }

    /**
     * Runs it.
     *
     * @param arguments date of the measurement; folder for its table; which sample's study
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("cluster-runs");
        SealedStudy study = new StudyFiles(
                        BuiltInCatalog.read(), Checker.standard().ruleSets(), ClusterStudy.version())
                .open(Samples.study(arguments[2]), null)
                .study();
        study = shortened(study);
        List<Measured> measured = new ArrayList<>();
        for (int workers : new int[] {1, 2}) {
            measured.add(measured(folder, study, workers));
        }
        String text = text(arguments[0], study, measured);
        Files.writeString(Path.of(arguments[1]).resolve("studies-cluster.md"), text, StandardCharsets.UTF_8);
        System.out.println(text);
    }

    /** With a few seeds: enough for rates. */
    private static SealedStudy shortened(SealedStudy whole) {
        Study study = whole.study();
        Study few = new Study(
                study.id(),
                study.name(),
                study.brief(),
                study.journey(),
                study.axes(),
                new Study.Seeds(1, SEEDS),
                study.leaveOut(),
                study.moves(),
                study.keep(),
                study.note());
        return new SealedStudy(
                whole.program(),
                few,
                whole.brief(),
                whole.bodies(),
                whole.carriers(),
                whole.items(),
                whole.cables(),
                whole.pieces(),
                whole.journey());
    }

    private static Measured measured(Path folder, SealedStudy study, int workers)
            throws IOException, InterruptedException {
        StudyFolder kept = StudyFolder.prepare(folder.resolve("study-" + workers), study);
        Path file = kept.path().resolve(StudyFolder.RESULTS);
        try (LocalCluster cluster =
                new LocalCluster(Files.createDirectory(folder.resolve("spark-" + workers)), SECRET, workers)) {
            long start = System.nanoTime();
            Process driver = cluster.driver("driver", SECRET, kept.path());
            while (driver.isAlive() && lines(file) < 2) {
                TimeUnit.MILLISECONDS.sleep(5);
            }
            long first = System.nanoTime();
            Duration cpuFirst = driver.info().totalCpuDuration().orElse(Duration.ZERO);
            int total = study.plan().count();
            Duration cpuLast = cpuFirst;
            while (driver.isAlive() && lines(file) < total + 1) {
                cpuLast = driver.info().totalCpuDuration().orElse(cpuLast);
                TimeUnit.MILLISECONDS.sleep(5);
            }
            long last = System.nanoTime();
            driver.waitFor();
            List<RunResult> table = kept.table();
            if (table.size() != total) {
                throw new IllegalStateException("Only " + table.size() + " runs came:\n" + cluster.log("driver"));
            }
            double mean =
                    table.stream().mapToDouble(RunResult::seconds).average().orElse(0);
            return new Measured(
                    workers,
                    (first - start) / 1e9,
                    total - 1,
                    (last - first) / 1e9,
                    mean,
                    cpuLast.minus(cpuFirst).toNanos() / 1e6 / (total - 1),
                    table.stream().map(RunResult::withoutTime).toList());
        }
    }

    private static String text(String date, SealedStudy study, List<Measured> measured) {
        StringBuilder rows = new StringBuilder();
        for (Measured one : measured) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %d | %.1f | %.1f | %.0f | %.2f | %.0f | %.1f |%n",
                    one.workers,
                    one.startSeconds,
                    one.seconds,
                    one.jobsAMinute(),
                    one.meanSeconds,
                    one.overheadMs(),
                    one.driverMs));
        }
        Measured one = measured.get(0);
        Measured two = measured.get(1);
        String same =
                one.table.equals(two.table) ? "The tables of both are the same." : "**The tables of both differ.**";
        return String.format(
                Locale.ROOT,
                """
                # Studies on a cluster: scaling and overhead

                Written by the measurement of `solver/cluster`. The study `%s` with 15 seeds (%d runs of %d moves) on a standalone cluster of Apache Spark on
                loopback, `spark.authenticate` and `spark.network.crypto.enabled` on, workers of one core each. Driver, master and workers share the
                %d cores of one machine, so two workers and the driver take from each other. Times are between the first result and the last.

                Date: %s. Java %s.

                | workers | to the first result (s) | first to last (s) | jobs a minute | a job on its worker, mean (s) | beside its own work (ms) | processor time of the driver for a job (ms) |
                | --- | --- | --- | --- | --- | --- | --- |
                %s
                %s Two workers do %.2f times as much as one.

                ## On paper: %,d cores

                With the figures of one worker: a job of %.2f s and %.0f ms beside it, %.1f ms of the driver. %,d cores then end %.0f jobs a second; the
                driver needs %.1f cores for that (making, reading, checking and keeping, one thread a core). With jobs ten times as long it is %.1f. Each
                2 000 jobs the slowest workers wait for the last job, so %,d cores are idle for up to one job in every %.0f s. A study of 100 000 runs ends after
                some %.0f minutes.
                """,
                study.study().id(),
                study.plan().count(),
                study.study().moves(),
                Runtime.getRuntime().availableProcessors(),
                date,
                System.getProperty("java.version"),
                rows,
                same,
                two.jobsAMinute() / one.jobsAMinute(),
                CORES,
                one.meanSeconds,
                one.overheadMs(),
                one.driverMs,
                CORES,
                jobsASecond(one, 1),
                jobsASecond(one, 1) * one.driverMs / 1000,
                jobsASecond(one, 10) * one.driverMs / 1000,
                CORES,
                2_000 / jobsASecond(one, 1),
                100_000 / jobsASecond(one, 1) / 60);
    }

    private static double jobsASecond(Measured one, double longer) {
        return CORES / (longer * one.meanSeconds + Math.max(0, one.overheadMs()) / 1000);
    }

    private static int lines(Path file) throws IOException {
        if (!Files.exists(file)) {
            return 0;
        }
        byte[] bytes = Files.readAllBytes(file);
        int lines = 0;
        for (byte one : bytes) {
            lines += one == '\n' ? 1 : 0;
        }
        return lines;
    }
}
