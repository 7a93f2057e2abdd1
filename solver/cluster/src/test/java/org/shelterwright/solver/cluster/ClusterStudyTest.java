package org.shelterwright.solver.cluster;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyRunner;

class ClusterStudyTest {
    private static final String SECRET = "of this test alone";

    @TempDir
    private static Path folder;

    private static LocalCluster cluster;
    private static SealedStudy study;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        study = SmallPost.study(folder, 5, 2_000);
        cluster = new LocalCluster(Files.createDirectory(folder.resolve("spark")), SECRET, 2);
    }

    @AfterAll
    static void stop() throws InterruptedException {
        if (cluster != null) {
            cluster.close();
        }
    }

    @Test
    void givesTheTableOfOneMachineEvenIfAWorkerDiesMidway() throws IOException, InterruptedException {
        StudyFolder spread = StudyFolder.prepare(folder.resolve("spread"), study);
        Process driver = cluster.driver("driver", SECRET, spread.path());
        cluster.waiting("driver", driver)
                .until("13 lines of results", Duration.ofSeconds(300), () -> Tables.lines(spread) >= 13);
        ProcessHandle executor = cluster.executor(0).orElseThrow();

        assertThat(executor.destroyForcibly()).as("killed with -9").isTrue();
        int atKill = Tables.lines(spread);
        assertThat(driver.waitFor(300, TimeUnit.SECONDS))
                .as(cluster.log("driver"))
                .isTrue();

        assertThat(atKill).as("results at the kill").isLessThan(31);
        assertThat(driver.exitValue()).as(cluster.log("driver")).isEqualTo(1);
        assertThat(cluster.log("driver")).contains("Lost executor");
        assertThat(cluster.log("master"))
                .as("which a driver that is let in leaves")
                .contains("Registering app driver");
        StudyFolder here = StudyFolder.prepare(folder.resolve("here"), study);
        Checker checker = Checker.standard();
        new StudyRunner(checker, new StandardFitter(checker)).run(here, 2, progress -> {}, new StopSignal());
        assertThat(Tables.text(spread)).hasSize(30).isEqualTo(Tables.text(here));
        assertThat(Tables.lines(spread)).as("a head, and each run once").isEqualTo(31);
    }

    @Test
    void aDriverWithAnotherSecretIsNotLetIn() throws IOException, InterruptedException {
        StudyFolder refused = StudyFolder.prepare(folder.resolve("refused"), study);

        Process driver = cluster.driver("stranger", "guessed", refused.path());
        String refusal = "Failed to connect to master 127.0.0.1";
        cluster.waiting("stranger", driver).untilItSays(refusal, Duration.ofSeconds(180));
        driver.destroyForcibly().waitFor(20, TimeUnit.SECONDS);

        assertThat(refused.table()).as("only what needs no cluster").allMatch(run -> run.refused() != null);
        assertThat(cluster.log("master")).doesNotContain("Registering app stranger");
    }
}
