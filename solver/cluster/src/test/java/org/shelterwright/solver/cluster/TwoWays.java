package org.shelterwright.solver.cluster;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyRunner;

/**
 * The study of the sample <em>Too Much</em> twice: here on two threads, and on a standalone cluster of two workers, of which one is
 * killed with -9 in the middle; and a driver with another secret. The tables must be the same to the byte. What is done is kept in
 * {@code target/two-ways}, so that it can be measured in parts.
 */
public final class TwoWays {
    private static final int WAYS = 4;
    private static final String SECRET = "of this measurement alone";
    private static final String TOLD = "told.txt";

    /** Half of 200 runs took seven minutes on two cores that some twenty other processes used. */
    private static final Duration MOST = Duration.ofHours(1);

    private final Path folder;
    private final SealedStudy study;
    private final int runs;

    private TwoWays(Path folder, int runs) throws IOException {
        this.folder = Files.createDirectories(folder.toAbsolutePath());
        this.runs = runs;
        String whole = new String(Samples.study("too-much").bytes(), StandardCharsets.UTF_8);
        String some = whole.replaceFirst("\"count\": 50", "\"count\": " + runs / WAYS);
        study = new StudyFiles(BuiltInCatalog.read(), RuleSets.builtIn(), ClusterStudy.version())
                .open(new InputFile("too-much.study.json", some.getBytes(StandardCharsets.UTF_8)), null)
                .study();
        if (study.plan().count() != runs) {
            throw new IllegalArgumentException("The number of runs, " + runs + ", must be a multiple of " + WAYS
                    + ": that many ways to set it are run with each seed.");
        }
    }

    /**
     * Runs it.
     *
     * @param arguments date of the measurement; folder for its table; then, if not 200, how many runs; then, if not all, how many of the
     *     four parts to do now
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int runs = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 200;
        int parts = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 4;
        TwoWays ways = new TwoWays(Path.of("target", "two-ways", Integer.toString(runs)), runs);
        if (!ways.did(parts)) {
            System.out.println(
                    "Measure again for the parts that are left: what is done is kept in " + ways.folder + ".");
            return;
        }
        String text = ways.text(arguments[0]);
        Files.writeString(Path.of(arguments[1]).resolve("studies-two-ways.md"), text, StandardCharsets.UTF_8);
        System.out.println(text);
    }

    /** Does some parts that were not done yet; tells whether all are. */
    private boolean did(int most) throws IOException, InterruptedException {
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("here", this::here);
        parts.put("spread", path -> spread(path, false));
        parts.put("killed", path -> spread(path, true));
        parts.put("stranger", this::stranger);
        int left = most;
        for (Map.Entry<String, Part> part : parts.entrySet()) {
            Path path = folder.resolve(part.getKey());
            if (!Files.exists(path.resolve(TOLD))) {
                if (left-- == 0) {
                    return false;
                }
                Files.createDirectories(path);
                Files.writeString(path.resolve(TOLD), part.getValue().run(path));
            }
        }
        return true;
    }

    private String told(String part) throws IOException {
        return Files.readString(folder.resolve(part).resolve(TOLD));
    }

    private String text(String date) throws IOException {
        return """
                # %d fits, here and on a cluster

                Written by the measurement of `solver/cluster`: %d fits of the sample *Too Much* (24 units; with one bench and with two, two kinds of
                batteries, %d seeds, %d moves each), on two threads of one process, and on a standalone cluster of Apache Spark on loopback: two
                workers of one core each, `spark.authenticate` with a secret, `spark.network.crypto.enabled`. The time of a cluster is that from the start of its driver; driver, master
                and workers share the cores. Tables are written out in the order of the runs, with the places of all units
                and without the times, and compared byte by byte. Times say little where other work shares the machine.

                Machine: %d cores, Java %s. Date: %s.

                | where | wall clock (s) | results at the kill | lines of results | runs, each once | table |
                | --- | --- | --- | --- | --- | --- |
                | here, two threads | %s | the reference, %,d bytes |
                | cluster, two workers | %s | %s |
                | cluster, one of two executors killed with -9 midway | %s | %s |

                %s
                """.formatted(
                        runs,
                        runs,
                        runs / WAYS,
                        study.study().moves(),
                        Runtime.getRuntime().availableProcessors(),
                        System.getProperty("java.version"),
                        date,
                        told("here"),
                        Files.size(table("here")),
                        told("spread"),
                        same("spread"),
                        told("killed"),
                        same("killed"),
                        told("stranger"));
    }

    /** One part of the measurement. */
    private interface Part {
        String run(Path path) throws IOException, InterruptedException;
    }

    private String here(Path path) throws IOException {
        StudyFolder kept = StudyFolder.prepare(path, study);
        Checker checker = Checker.standard();
        long start = System.nanoTime();
        new StudyRunner(checker, new StandardFitter(checker)).run(kept, 2, progress -> {}, new StopSignal());
        return told(kept, (System.nanoTime() - start) / 1e9, "");
    }

    private String spread(Path path, boolean kill) throws IOException, InterruptedException {
        StudyFolder kept = StudyFolder.prepare(path, study);
        try (LocalCluster cluster = new LocalCluster(Files.createTempDirectory(path, "spark"), SECRET, 2)) {
            long start = System.nanoTime();
            Process driver = cluster.driver("driver", SECRET, path);
            String atKill = "";
            if (kill) {
                cluster.waiting("driver", driver)
                        .until("half of the results", MOST, () -> Tables.lines(kept) > runs / 2);
                boolean sent = cluster.executor(0).orElseThrow().destroyForcibly();
                atKill = Integer.toString(Tables.lines(kept) - 1);
                driver.waitFor();
                if (!sent || !cluster.log("driver").contains("Lost executor")) {
                    throw new IllegalStateException("No executor was lost:\n" + cluster.log("driver"));
                }
            }
            driver.waitFor();
            return told(kept, (System.nanoTime() - start) / 1e9, atKill);
        }
    }

    private String stranger(Path path) throws IOException, InterruptedException {
        StudyFolder kept = StudyFolder.prepare(path, study);
        try (LocalCluster cluster = new LocalCluster(Files.createTempDirectory(path, "spark"), SECRET, 1)) {
            Process driver = cluster.driver("stranger", "guessed", path);
            String refusal = "Failed to connect to master 127.0.0.1";
            cluster.waiting("stranger", driver).untilItSays(refusal, MOST);
            driver.destroyForcibly().waitFor();
            boolean in = cluster.log("master").contains("Registering app stranger");
            return "A driver with another secret "
                    + (in
                            ? "**was let in**"
                            : "is not let in: \"" + refusal
                                    + "\" stands in its log, nothing of it in that of the master")
                    + ", and " + kept.table().size() + " of its runs were done.";
        }
    }

    /** Writes the table and tells what came. */
    private String told(StudyFolder kept, double seconds, String atKill) throws IOException {
        List<String> table = Tables.text(kept);
        Files.write(kept.path().resolve("table.jsonl"), table, StandardCharsets.UTF_8);
        return String.format(
                Locale.ROOT,
                "%.0f | %s | %d | %d",
                seconds,
                atKill,
                Tables.lines(kept),
                kept.table().size());
    }

    private Path table(String name) {
        return folder.resolve(name).resolve("table.jsonl");
    }

    private String same(String name) throws IOException {
        long at = Files.mismatch(table("here"), table(name));
        return at < 0 ? "the same, byte for byte" : "**another from byte " + at + "**";
    }
}
