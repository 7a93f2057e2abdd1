package org.shelterwright.solver.cluster;

import org.shelterwright.solver.study.JobWork;

/** Does a job where Spark has sent it. */
final class WorkerJob {
    private WorkerJob() {}

    /** The limits and rule sets are read once a process. */
    private static final class Work {
        static final JobWork STANDARD = JobWork.standard();
    }

    static String done(String line) {
        return Work.STANDARD.done(line);
    }
}
