package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.LongSupplier;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.set.LoadSet;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;

/** The published single-container sets: volume by class, by time and by the number of pieces; every load is checked. */
final class LoadRuns {
    private final LoadSetting setting;

    /** What one run gave. */
    private record Run(int set, int problem, int pieces, Support support, double seconds, double percent) {}

    private record Job(int set, SetProblem problem, Support support, double seconds) {}

    LoadRuns(LoadSetting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        List<Job> jobs = new ArrayList<>();
        for (double seconds : setting.seconds()) {
            for (Support support : setting.supports()) {
                for (int set : setting.classes()) {
                    LoadSet read = read(set);
                    for (SetProblem problem : read.problems()) {
                        if (problem.number() >= setting.from() && problem.number() <= setting.to()) {
                            jobs.add(new Job(set, problem, support, seconds));
                        }
                    }
                }
            }
        }
        warm(jobs);
        return text(machine, all(jobs));
    }

    static LoadSet read(int set) {
        return LoadSet.read(
                InputFile.read(folder().resolve(String.format(Locale.ROOT, "container-loading/br%02d-dev.txt", set))));
    }

    static Path folder() {
        String named = System.getenv("BENCHMARK_DATA");
        if (named == null || !Files.isDirectory(Path.of(named))) {
            throw new IllegalArgumentException(
                    "The published sets are read from the folder that BENCHMARK_DATA names. Set it.");
        }
        return Path.of(named);
    }

    /** Lets the compiler see the code first. */
    private void warm(List<Job> jobs) {
        for (Job job : jobs.subList(0, Math.min(2, jobs.size()))) {
            one(new Job(job.set(), job.problem(), job.support(), 1));
        }
    }

    private List<Run> all(List<Job> jobs) {
        ExecutorService executor = Executors.newFixedThreadPool(setting.threads());
        try {
            List<Future<Run>> futures = new ArrayList<>();
            for (Job job : jobs) {
                futures.add(executor.submit(() -> one(job)));
            }
            List<Run> runs = new ArrayList<>();
            for (Future<Run> future : futures) {
                runs.add(future.get());
            }
            return runs;
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("A measurement failed.", e);
        } finally {
            executor.shutdownNow();
        }
    }

    private Run one(Job job) {
        LoadProblem problem = job.problem().with(job.support());
        LoadResult result = new StandardLoader(clock())
                .load(
                        LoadRequest.single(
                                problem, setting.seed(), Budget.time(Duration.ofNanos((long) (job.seconds() * 1e9)))),
                        progress -> {},
                        new StopSignal());
        if (!result.faults().isEmpty()) {
            throw new IllegalStateException(
                    "Class " + job.set() + ", problem " + job.problem().number() + ": " + result.faults());
        }
        if (setting.verbose()) {
            System.err.printf(
                    Locale.ROOT,
                    "%d %d %s %.0f s: %.3f, %d moves, %.2f s%n",
                    job.set(),
                    job.problem().number(),
                    job.support(),
                    job.seconds(),
                    100 * result.share(),
                    result.moves(),
                    result.elapsed().toMillis() / 1e3);
        }
        return new Run(
                job.set(),
                job.problem().number(),
                job.problem().pieces(),
                job.support(),
                job.seconds(),
                100 * result.share());
    }

    private LongSupplier clock() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return setting.cpu() ? threads::getCurrentThreadCpuTime : System::nanoTime;
    }

    private String text(Machine machine, List<Run> runs) {
        Table classes = new Table(
                "support",
                "limit (s)",
                "class",
                "problems",
                "pieces, mean",
                "volume, mean (%)",
                "standard error",
                "record, 100 problems");
        LoadRecords records = new LoadRecords();
        Table means = new Table("support", "limit (s)", "classes", "mean over classes (%)");
        for (Support support : setting.supports()) {
            for (double seconds : setting.seconds()) {
                Map<Integer, List<Run>> byClass = new TreeMap<>();
                runs.stream()
                        .filter(run -> run.support() == support && run.seconds() == seconds)
                        .forEach(run -> byClass.computeIfAbsent(run.set(), k -> new ArrayList<>())
                                .add(run));
                byClass.forEach((set, list) -> classes.add(
                        name(support),
                        seconds,
                        set,
                        list.size(),
                        list.stream().mapToInt(Run::pieces).average().orElse(0),
                        hundredths(mean(list)),
                        hundredths(error(list)),
                        records.best(support, set)));
                means.add(
                        name(support),
                        seconds,
                        byClass.keySet().toString(),
                        hundredths(byClass.values().stream()
                                .mapToDouble(LoadRuns::mean)
                                .average()
                                .orElse(Double.NaN)));
            }
        }
        return """
                # Loading one container

                The single-container sets of Bischoff and Ratcliff (1995) and Davies and Bischoff (1999): share of the volume of
                the container that is filled. One thread an instance; the limit is %s and includes making the
                blocks. Every load is checked from scratch, in whole numbers, by code of its own: inside, no
                overlap, allowed stance, counts, and with full support the whole base of each piece. Records are means over 100 problems a class, made in 150 to 500 s
                on older machines; here fewer problems are run, so compare with the standard error in mind.

                %s
                %d at a time, problems %d to %d of each class, seed %d. Date: %s.

                %s
                %s""".formatted(
                        setting.cpu() ? "processor time of its thread" : "wall-clock time",
                        machine.text(),
                        setting.threads(),
                        setting.from(),
                        setting.to(),
                        setting.seed(),
                        setting.date(),
                        means.text(),
                        classes.text());
    }

    static String name(Support support) {
        return support == Support.FULL ? "full" : "none";
    }

    static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private static double mean(List<Run> runs) {
        return runs.stream().mapToDouble(Run::percent).average().orElse(Double.NaN);
    }

    private static double error(List<Run> runs) {
        double mean = mean(runs);
        double squares = runs.stream()
                .mapToDouble(run -> (run.percent() - mean) * (run.percent() - mean))
                .sum();
        return Math.sqrt(squares / Math.max(1, runs.size() - 1) / runs.size());
    }
}
