package org.shelterwright.solver.study;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.results.ResultsFile;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StopSignal;

/**
 * Runs a study on some threads of this process, one run a thread. Each result is on the disk before the next is begun on its
 * thread; runs that have a result are not done again.
 */
public final class StudyRunner {
    private final Checker checker;
    private final JobWork work;

    public StudyRunner(Checker checker, Fitter fitter) {
        this.checker = checker;
        this.work = new JobWork(fitter);
    }

    /**
     * Does the runs that have no result yet, until all have one or the signal asks to stop. Runs that were in hand then are given
     * up, since what a stopped search finds cannot be had again.
     *
     * @return where it stands
     * @throws org.shelterwright.catalog.json.InputException if the results cannot be written, or are of another study
     */
    public StudyProgress run(StudyFolder folder, int threads, StudyObserver observer, StopSignal stop) {
        StudyDesk desk = new StudyDesk(folder.study(), checker);
        int total = folder.study().plan().count();
        try (ResultsFile results = folder.results()) {
            Tally tally = new Tally(results, total, observer);
            AtomicInteger next = new AtomicInteger();
            StopSignal own = new StopSignal();
            ExecutorService executor = Executors.newFixedThreadPool(threads, StudyRunner::thread);
            try {
                List<Future<?>> workers = new ArrayList<>();
                for (int i = 0; i < threads; i++) {
                    workers.add(executor.submit(() -> work(desk, results, tally, next, stop, own)));
                }
                await(workers, stop);
            } finally {
                own.stop();
                executor.shutdownNow();
            }
            return tally.stand();
        }
    }

    private void work(
            StudyDesk desk, ResultsFile results, Tally tally, AtomicInteger next, StopSignal asked, StopSignal failed) {
        try {
            for (int run = next.incrementAndGet();
                    run <= tally.total && !asked.stopped() && !failed.stopped();
                    run = next.incrementAndGet()) {
                if (!results.holds(run)) {
                    RunResult result = result(desk, run, asked);
                    if (result == null) {
                        return;
                    }
                    results.add(result);
                    tally.added();
                }
            }
        } catch (RuntimeException | Error e) {
            failed.stop();
            throw e;
        }
    }

    /** The result of a run; {@code null} if it was given up. */
    private @Nullable RunResult result(StudyDesk desk, int run, StopSignal asked) {
        StudyDesk.Start start = desk.start(run);
        StudyJob job = start.job();
        if (job == null) {
            return start.refused();
        }
        try {
            JobResult found = work.done(job, asked);
            return asked.stopped() ? null : desk.take(found);
        } catch (RuntimeException e) {
            throw new IllegalStateException("Run " + run + " of the study failed.", e);
        }
    }

    private static void await(List<Future<?>> workers, StopSignal stop) {
        try {
            for (Future<?> worker : workers) {
                worker.get();
            }
        } catch (InterruptedException e) {
            stop.stop();
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The study was interrupted.", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException known) {
                throw known;
            }
            throw new IllegalStateException("A run of the study failed.", e.getCause());
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "study-run");
        thread.setDaemon(true);
        return thread;
    }

    /** Counts what was added and tells it. */
    private static final class Tally {
        private final ResultsFile results;
        private final int total;
        private final StudyObserver observer;
        private final long start = System.nanoTime();
        private int fresh;

        Tally(ResultsFile results, int total, StudyObserver observer) {
            this.results = results;
            this.total = total;
            this.observer = observer;
        }

        synchronized void added() {
            fresh++;
            observer.progress(stand());
        }

        synchronized StudyProgress stand() {
            return new StudyProgress(results.count(), fresh, total, Duration.ofNanos(System.nanoTime() - start));
        }
    }
}
