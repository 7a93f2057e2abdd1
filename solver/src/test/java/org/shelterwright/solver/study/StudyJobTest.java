package org.shelterwright.solver.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

class StudyJobTest {
    private static final SealedStudy STUDY = SmallStudy.of(1, 400);
    private static final Checker CHECKER = Checker.standard();

    @Test
    void aJobIsTheSameAfterItsWayThroughALine() {
        StudyDesk desk = new StudyDesk(STUDY, CHECKER);
        for (int run : new int[] {1, 2, 4, 5, 6, 8}) {
            StudyJob job = desk.start(run).job();

            assertThat(StudyJob.of(job.line())).isEqualTo(job);
            assertThat(job.line()).doesNotContain("\n");
        }
    }

    @Test
    void aJobDoneAsALineGivesWhatItGivesHere() {
        StudyDesk desk = new StudyDesk(STUDY, CHECKER);
        StudyJob job = desk.start(2).job();
        JobWork work = new JobWork(new StandardFitter(CHECKER));

        JobResult here = work.done(job, new StopSignal());
        JobResult there = JobResult.of(JobWork.standard().done(job.line()));

        assertThat(desk.take(there).withoutTime()).isEqualTo(desk.take(here).withoutTime());
        assertThat(there.found().placements())
                .isEqualTo(here.found().placements())
                .hasSize(4);
    }

    @Test
    void linesThatAreNoJobsAndNoResultsAreRefused() {
        assertThatThrownBy(() -> StudyJob.of("{}"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("The key \"format\" is missing in the file.");
        assertThatThrownBy(() -> JobResult.of(desk().start(1).job().line()))
                .hasMessageContaining("This is a \"shelterwright-study-job\" file, but a"
                        + " \"shelterwright-study-job-result\" file is needed here.");
        assertThatThrownBy(() -> StudyJob.of(desk().start(1).job().line().replace("\"rack-1\"", "\"rack-9 9\"")))
                .isInstanceOf(InputException.class);
    }

    private static StudyDesk desk() {
        return new StudyDesk(STUDY, CHECKER);
    }
}
