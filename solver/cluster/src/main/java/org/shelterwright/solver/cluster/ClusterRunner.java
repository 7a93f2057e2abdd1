package org.shelterwright.solver.cluster;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.results.ResultsFile;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.study.JobResult;
import org.shelterwright.solver.study.StudyDesk;
import org.shelterwright.solver.study.StudyJob;
import scala.Function1;
import scala.Function2;
import scala.collection.Iterator;
import scala.reflect.ClassTag$;
import scala.runtime.BoxedUnit;

/**
 * Runs a study on a cluster. The driver keeps each result as it arrives; runs that have one are not sent out again. If a worker
 * dies, Spark sends its jobs to another.
 */
final class ClusterRunner {
    /** Jobs that are sent out together; more would only fill the memory of the driver. */
    private static final int AT_ONCE = 2_000;

    private final JavaSparkContext context;
    private final Checker checker;

    ClusterRunner(JavaSparkContext context, Checker checker) {
        this.context = context;
        this.checker = checker;
    }

    /**
     * Does the runs that have no result yet.
     *
     * @return how many were done now
     * @throws org.shelterwright.catalog.json.InputException if the results cannot be written, or are of another study
     */
    int run(StudyFolder folder) {
        StudyDesk desk = new StudyDesk(folder.study(), checker);
        int total = folder.study().plan().count();
        try (ResultsFile results = folder.results()) {
            int before = results.count();
            List<String> jobs = new ArrayList<>();
            for (int run = 1; run <= total; run++) {
                if (!results.holds(run)) {
                    StudyDesk.Start start = desk.start(run);
                    StudyJob job = start.job();
                    RunResult refused = start.refused();
                    if (job != null) {
                        jobs.add(job.line());
                    } else if (refused != null) {
                        results.add(refused);
                    }
                }
                if (jobs.size() == AT_ONCE || (run == total && !jobs.isEmpty())) {
                    send(jobs, desk, results);
                    jobs.clear();
                }
            }
            return results.count() - before;
        }
    }

    /** Results are checked on threads of their own, since Spark waits for whoever it tells of a result. */
    private void send(List<String> jobs, StudyDesk desk, ResultsFile results) {
        AtomicReference<@Nullable RuntimeException> failed = new AtomicReference<>();
        ExecutorService checking =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            JavaRDD<String> lines = context.parallelize(jobs, jobs.size());
            Function1<Iterator<String>, String> work =
                    (Function1<Iterator<String>, String> & Serializable) one -> WorkerJob.done(one.next());
            Function2<Object, String, BoxedUnit> arrived = (index, line) -> {
                checking.execute(() -> keep(line, desk, results, failed));
                return BoxedUnit.UNIT;
            };
            context.sc().runJob(lines.rdd(), work, arrived, ClassTag$.MODULE$.apply(String.class));
            checking.shutdown();
            while (!checking.awaitTermination(1, TimeUnit.SECONDS)) {
                // The last results are being checked and written.
            }
        } catch (Exception e) {
            // Spark throws checked exceptions that it does not declare. What made us call the jobs off says more.
            RuntimeException cause = failed.get();
            throw cause == null ? new IllegalStateException("The cluster failed.", e) : cause;
        } finally {
            checking.shutdown();
        }
        RuntimeException failure = failed.get();
        if (failure != null) {
            throw failure;
        }
    }

    private void keep(
            String line, StudyDesk desk, ResultsFile results, AtomicReference<@Nullable RuntimeException> failed) {
        if (failed.get() != null) {
            return;
        }
        try {
            results.add(desk.take(JobResult.of(line)));
        } catch (RuntimeException e) {
            failed.compareAndSet(null, e);
            context.sc().cancelAllJobs();
        }
    }
}
