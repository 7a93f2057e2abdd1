package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongSupplier;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.solver.bench.LoadRows.Row;
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
        LoadRows rows = new LoadRows(setting.folder().resolve("load-classes.csv"));
        List<Row> before = rows.read();
        jobs.removeIf(job -> before.stream().anyMatch(row(job, 0, 0, 0)::sameRun));
        warm(jobs);
        int left = all(jobs, rows);
        if (left > 0) {
            System.err.println(left + " runs are left: measure again to go on.");
        }
        return new LoadTable(setting, rows.read()).text(machine);
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

    /** Runs what the time allows, most wanted first; gives how many are left. */
    private int all(List<Job> jobs, LoadRows rows) {
        long end = System.nanoTime() + Math.round(setting.minutes() * 60e9);
        AtomicInteger left = new AtomicInteger(jobs.size());
        ExecutorService executor = Executors.newFixedThreadPool(setting.threads());
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (Job job : jobs) {
                futures.add(executor.submit(() -> {
                    if (System.nanoTime() < end) {
                        rows.add(one(job));
                        left.decrementAndGet();
                    }
                }));
            }
            for (Future<?> future : futures) {
                future.get();
            }
            return left.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("A measurement failed.", e);
        } finally {
            executor.shutdownNow();
        }
    }

    private Row one(Job job) {
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
        return row(job, 100 * result.share(), result.moves(), result.elapsed().toNanos() / 1e9);
    }

    private Row row(Job job, double percent, long spaces, double took) {
        return new Row(
                job.support(),
                job.seconds(),
                setting.cpu() ? "cpu" : "wall",
                setting.seed(),
                job.set(),
                job.problem().number(),
                job.problem().kinds().size(),
                job.problem().pieces(),
                percent,
                spaces,
                took);
    }

    private LongSupplier clock() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return setting.cpu() ? threads::getCurrentThreadCpuTime : System::nanoTime;
    }

    static String name(Support support) {
        return support == Support.FULL ? "full" : "none";
    }

    static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
