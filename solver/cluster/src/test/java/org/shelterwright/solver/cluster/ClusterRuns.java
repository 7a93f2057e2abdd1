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
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.results.ResultsFile;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyRunner;

/**
 * Measures a study on a standalone cluster on loopback, with authentication and encryption on: jobs a minute with one worker and with
 * two, what each job costs beside its own work, and what the driver spends; and plans a cluster of 1 000 cores from it.
 */
public final class ClusterRuns {
    private static final int CORES = 1_000;
    private static final int SEEDS = 120;
    private static final long MOVES = 20_000;

    /** Share of the jobs that warm up driver and workers and are not counted. */
    private static final double WARM = 0.3;

    private static final String SECRET = "of this measurement alone";

    /** Longer than all jobs took where much other work shared the machine. */
    private static final Duration MOST = Duration.ofMinutes(30);

    private ClusterRuns() {}

    /** Processor time (s): of the driver, of the processes that do the jobs, of master and workers, which watch. */
    private record Used(double driver, double executors, double watching) {
        static Used of(Process driver, LocalCluster cluster) {
            return new Used(
                    LocalCluster.seconds(driver.toHandle()), cluster.executorSeconds(), cluster.watchingSeconds());
        }

        Used since(Used o) {
            return new Used(driver - o.driver, executors - o.executors, watching - o.watching);
        }

        double all() {
            return driver + executors + watching;
        }
    }

    /**
     * What one cluster did between its first result and its last.
     *
     * @param meanSeconds mean time of a job on its worker, as it says itself
     * @param used processor time meanwhile
     */
    private record Measured(
            int workers,
            double startSeconds,
            int jobs,
            double seconds,
            double meanSeconds,
            Used used,
            List<RunResult> table) {
        double driverMs() {
            return 1000 * used.driver / jobs;
        }

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
     * @param arguments date of the measurement; folder for its table; then, if not the usual, seeds, moves and the name of the table
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("cluster-runs");
        int seeds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : SEEDS;
        long moves = arguments.length > 3 ? Long.parseLong(arguments[3]) : MOVES;
        String name = arguments.length > 4 ? arguments[4] : "studies-cluster";
        SealedStudy study = SmallPost.study(folder, seeds, moves);
        List<Measured> measured = new ArrayList<>();
        for (int workers : new int[] {1, 2}) {
            measured.add(measured(folder, study, workers));
        }
        alone(folder.resolve("warm"), study, 2);
        double gain = alone(folder.resolve("two"), study, 2) / alone(folder.resolve("one"), study, 1);
        String text = text(arguments[0], study, measured, gain);
        Files.writeString(Path.of(arguments[1]).resolve(name + ".md"), text, StandardCharsets.UTF_8);
        System.out.println(text);
    }

    /** Jobs a second of the same study on some threads of this process, without any cluster. */
    private static double alone(Path folder, SealedStudy study, int threads) {
        Checker checker = Checker.standard();
        StudyFolder kept = StudyFolder.prepare(folder, study);
        long start = System.nanoTime();
        new StudyRunner(checker, new StandardFitter(checker)).run(kept, threads, progress -> {}, new StopSignal());
        return kept.table().size() / ((System.nanoTime() - start) / 1e9);
    }

    private static Measured measured(Path folder, SealedStudy study, int workers)
            throws IOException, InterruptedException {
        StudyFolder kept = StudyFolder.prepare(folder.resolve("study-" + workers), study);
        Path file = kept.path().resolve(StudyFolder.RESULTS);
        try (LocalCluster cluster =
                new LocalCluster(Files.createDirectory(folder.resolve("spark-" + workers)), SECRET, workers)) {
            long start = System.nanoTime();
            Process driver = cluster.driver("driver", SECRET, kept.path());
            int total = study.plan().count();
            int refused = total / 3;
            int jobs = total - refused;
            int warm = (int) (WARM * jobs);
            Waiting waiting = cluster.waiting("driver", driver);
            waiting.until("a first result", MOST, () -> Tables.lines(kept) >= 2 + refused);
            long first = System.nanoTime();
            waiting.until("a share of the results", MOST, () -> Tables.lines(kept) >= 1 + refused + warm);
            long begin = System.nanoTime();
            Used atBegin = Used.of(driver, cluster);
            Used atEnd = atBegin;
            int from = Tables.lines(kept);
            while (driver.isAlive() && Tables.lines(kept) < total + 1) {
                atEnd = Used.of(driver, cluster);
                TimeUnit.MILLISECONDS.sleep(20);
            }
            long last = System.nanoTime();
            driver.waitFor();
            List<RunResult> inOrder = new ArrayList<>();
            ResultsFile.read(file, study, inOrder::add);
            if (inOrder.size() != total) {
                throw new IllegalStateException("Only " + inOrder.size() + " runs came:\n" + cluster.log("driver"));
            }
            int counted = total + 1 - from;
            double mean = inOrder.subList(total - counted, total).stream()
                    .mapToDouble(RunResult::seconds)
                    .average()
                    .orElse(0);
            return new Measured(
                    workers,
                    (first - start) / 1e9,
                    counted,
                    (last - begin) / 1e9,
                    mean,
                    atEnd.since(atBegin),
                    kept.table().stream().map(RunResult::withoutTime).toList());
        }
    }

    private static String text(String date, SealedStudy study, List<Measured> measured, double gain) {
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
                    one.driverMs()));
        }
        Measured one = measured.get(0);
        Measured two = measured.get(1);
        String same =
                one.table.equals(two.table) ? "The tables of both are the same." : "**The tables of both differ.**";
        return String.format(
                Locale.ROOT,
                """
                # Studies on a cluster: scaling and overhead

                Written by the measurement of `solver/cluster`: %d fits of a small post (three units, %d moves each) on a standalone cluster of Apache Spark on
                loopback, `spark.authenticate` and `spark.network.crypto.enabled` on, workers of one core each. Driver, master, workers and whatever else
                runs share the %d cores of one machine: with two workers, the driver takes from them. Not counted are the first %.0f %% of the jobs, while all
                warm up.

                Date: %s. Java %s.

                | workers | to the first result (s) | counted jobs took (s) | jobs a minute | a job on its worker, mean (s) | beside its own work (ms) | processor time of the driver for a job (ms) |
                | --- | --- | --- | --- | --- | --- | --- |
                %s
                %s Two workers do %.2f times as much as one.

                Who used the %d cores while the counted jobs were done, as cores:

                | workers | driver | executors, which do the jobs | master and workers, which watch | together |
                | --- | --- | --- | --- | --- |
                %s
                %s Without any cluster, two threads of one process do %.2f times as much of this study as one thread here: more cannot be had of
                these cores by any means.

                ## On paper: %,d cores

                A job costs some %.0f ms on its worker beside its own work, and %.0f ms of one core of the driver (making, sending, reading, checking from scratch,
                keeping). For cores of workers that do nothing else:

                | a job takes (s) | jobs a second | cores of the driver | 100 000 runs take (min) |
                | --- | --- | --- | --- |
                %s
                Each 2 000 jobs, workers wait for the slowest of them: up to the time of one job, so jobs should be short beside 2 000 of them on all cores. A
                driver of more than some 16 cores is a machine of its own; where the table asks for more, give runs more moves, or split the study.
                                """,
                study.plan().count() - study.plan().count() / 3,
                study.study().moves(),
                Runtime.getRuntime().availableProcessors(),
                100 * WARM,
                date,
                System.getProperty("java.version"),
                rows,
                same,
                two.jobsAMinute() / one.jobsAMinute(),
                Runtime.getRuntime().availableProcessors(),
                cores(one) + cores(two),
                sentence(one, two),
                gain,
                CORES,
                Math.max(0, one.overheadMs()),
                one.driverMs(),
                plan(one));
    }

    private static String cores(Measured one) {
        return String.format(
                Locale.ROOT,
                "| %d | %.2f | %.2f | %.2f | %.2f |%n",
                one.workers,
                one.used.driver / one.seconds,
                one.used.executors / one.seconds,
                one.used.watching / one.seconds,
                one.used.all() / one.seconds);
    }

    /** What two workers could do if the driver and the rest took nothing from them. */
    private static String sentence(Measured one, Measured two) {
        double spent = 1000 * one.used.executors / one.jobs;
        double besides = 1000 * (one.used.driver + one.used.watching) / one.jobs;
        int cores = Runtime.getRuntime().availableProcessors();
        return String.format(
                Locale.ROOT,
                "With one worker, a job takes %.0f ms of processor time of its executor and %.0f ms of driver, master and worker. "
                        + "Two workers that keep %d cores full can so do at most %.2f times as much as one on this machine; they do %.2f.",
                spent,
                besides,
                cores,
                cores * 1000 / (spent + besides) / (one.jobsAMinute() / 60),
                two.jobsAMinute() / one.jobsAMinute());
    }

    private static String plan(Measured one) {
        StringBuilder rows = new StringBuilder();
        for (double seconds : new double[] {0.3, 1, 5, 25}) {
            double rate = CORES / (seconds + Math.max(0, one.overheadMs()) / 1000);
            rows.append(String.format(
                    Locale.ROOT,
                    "| %.1f | %.0f | %.1f | %.0f |%n",
                    seconds,
                    rate,
                    rate * one.driverMs() / 1000,
                    100_000 / rate / 60));
        }
        return rows.toString();
    }
}
