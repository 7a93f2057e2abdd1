package org.shelterwright.solver.cluster;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyRunner;

class ClusterStudyTest {
    private static final String BRIEF = """
            {"format": "shelterwright-brief", "version": 1, "id": "small-post", "name": "Small Post",
             "body": "box-4200", "crew": 0,
             "units": [
               {"id": "rack-1", "name": "Rack 1", "item": "rack-19-34u", "group": "racks"},
               {"id": "battery-box", "name": "Battery box", "item": "battery-box-24v", "group": "power"},
               {"id": "first-aid", "name": "First-aid cabinet", "item": "first-aid-cabinet", "group": "safety"}]}
            """;
    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "small", "name": "Small", "brief": "brief.json",
             "axes": [
               {"id": "body", "settings": [
                 {"id": "short"},
                 {"id": "long", "body": "box-6000"}]},
               {"id": "batteries", "settings": [
                 {"id": "as-listed"},
                 {"id": "deeper", "items": [{"item": "battery-box-24v", "deeper": 40, "heavierKg": 12}]},
                 {"id": "far-too-tall", "items": [{"item": "battery-box-24v", "taller": "3 m"}]}]}],
             "seeds": {"first": 1, "count": 5}, "moves": 2000}
            """;
    private static final String SECRET = "of this test alone";

    @TempDir
    private static Path folder;

    private static LocalCluster cluster;
    private static SealedStudy study;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("brief.json"), BRIEF);
        Checker checker = Checker.standard();
        study = new StudyFiles(BuiltInCatalog.read(), checker.ruleSets(), ClusterStudy.version())
                .open(new InputFile("study.json", STUDY.getBytes(StandardCharsets.UTF_8)), folder)
                .study();
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
        awaitResults(spread, 13, driver);
        ProcessHandle executor = cluster.executor(0).orElseThrow();

        assertThat(executor.destroyForcibly()).as("killed with -9").isTrue();
        int atKill = lines(spread);
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
        assertThat(table(spread)).hasSize(30).isEqualTo(table(here));
        assertThat(lines(spread)).as("a head, and each run once").isEqualTo(31);
    }

    @Test
    void aDriverWithAnotherSecretIsNotLetIn() throws IOException, InterruptedException {
        StudyFolder refused = StudyFolder.prepare(folder.resolve("refused"), study);

        Process driver = cluster.driver("stranger", "guessed", refused.path());
        String refusal = "Failed to connect to master 127.0.0.1";
        for (int i = 0;
                i < 1_800 && driver.isAlive() && !cluster.log("stranger").contains(refusal);
                i++) {
            Thread.sleep(100);
        }
        driver.destroyForcibly().waitFor(20, TimeUnit.SECONDS);

        assertThat(cluster.log("stranger")).contains(refusal);
        assertThat(refused.table()).as("only what needs no cluster").allMatch(run -> run.refused() != null);
        assertThat(cluster.log("master")).doesNotContain("Registering app stranger");
    }

    private static List<RunResult> table(StudyFolder folder) {
        return folder.table().stream().map(RunResult::withoutTime).toList();
    }

    private static void awaitResults(StudyFolder folder, int count, Process driver)
            throws IOException, InterruptedException {
        for (int i = 0; i < 6_000 && lines(folder) < count; i++) {
            assertThat(driver.isAlive()).as(cluster.log("driver")).isTrue();
            Thread.sleep(50);
        }
        assertThat(lines(folder)).as(cluster.log("driver")).isGreaterThanOrEqualTo(count);
    }

    private static int lines(StudyFolder folder) throws IOException {
        Path file = folder.path().resolve(StudyFolder.RESULTS);
        return Files.exists(file) ? (int) Files.readString(file).lines().count() : 0;
    }
}
