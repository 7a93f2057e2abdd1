package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.file.LayoutFiles;

/** What only a process of its own can show: its status, its streams, and how it ends. */
class ProcessTest {

    @TempDir
    Path folder;

    @Test
    void statusReachesTheShell() throws Exception {
        assertThat(run(java("--version")).status()).isZero();
        assertThat(run(java("check", Briefs.smallPost(folder))).status()).isEqualTo(1);
        assertThat(run(java("check", "gone.json")).status()).isEqualTo(2);
    }

    @Test
    void pipedResultsAreUtf8InACLocaleToo() throws Exception {
        Path brief = Briefs.write(folder, "b.json", Briefs.smallPost().replace("Small Post", "Größe 5 m²"));

        Ran ran = run(java("check", brief));

        assertThat(ran.outLines().get(0)).startsWith("Größe 5 m²: ");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void nothingButResultsIsPrintedWhenPiped() throws Exception {
        Ran ran = run(java("fit", Briefs.smallPost(folder), "--moves", "200000", "--out", folder.resolve("out")));

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).as("no progress and no log").isEmpty();
    }

    @Test
    void interruptStopsTheSearchAndTheBestIsWritten() throws Exception {
        Path out = folder.resolve("out");
        List<String> command = new ArrayList<>(List.of("env", "--default-signal=INT"));
        command.addAll(java("fit", Briefs.smallPost(folder), "--moves", "900000000000000", "--out", out));
        Process process = start(command);
        waitUntil(() -> Files.isDirectory(out), process);
        waitUntil(() -> cpuSeconds(process) > 5, process);

        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
        Instant asked = Instant.now();
        Ran ran = ended(process);

        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(Duration.between(asked, Instant.now())).isLessThan(Duration.ofSeconds(30));
        assertThat(ran.err())
                .contains("Stopping: the best so far is kept and written.", "The search was stopped after");
        assertThat(ran.out()).contains("written to " + out);
        assertThat(LayoutFiles.read(out.resolve("layout.json")).layout().placements())
                .hasSize(3);
    }

    @Test
    void fullDiskIsOneSentenceAndLeavesNothingHalf() throws Exception {
        // No file may grow beyond one block: for the program that is a disk that fills up while it writes.
        Path out = folder.resolve("out");
        List<String> command = new ArrayList<>(List.of("bash", "-c", "ulimit -f 1; exec \"$@\"", "bash"));
        command.addAll(java("fit", Briefs.smallPost(folder), "--moves", "5000", "--out", out));

        Ran ran = run(command);

        assertThat(ran.status()).as(ran.err()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err())
                .startsWith(out.resolve("layout.json") + ": The file could not be saved (File too large).");
        assertThat(out).doesNotExist();
    }

    @Test
    void resultsThatFindNoRoomAreReported() throws Exception {
        List<String> command = new ArrayList<>(List.of("bash", "-c", "exec \"$@\" > /dev/full", "bash"));
        command.addAll(java("catalog", "list"));

        Ran ran = run(command);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip())
                .isEqualTo("standard output: The disk is full. Make room, or choose a folder on another disk.");
    }

    @Test
    void readerThatStopsReadingIsNoFault() throws Exception {
        List<String> command = new ArrayList<>(List.of("bash", "-c", "\"$@\" | head -n 1", "bash"));
        command.addAll(java("catalog", "list"));

        Ran ran = run(command);

        assertThat(ran.outLines()).hasSize(1);
        assertThat(ran.err()).isEmpty();
    }

    private static List<String> java(Object... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "org.shelterwright.app.Shelterwright"));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        return command;
    }

    private Ran run(List<String> command) throws Exception {
        return ended(start(command));
    }

    private Process start(List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        Map<String, String> environment = builder.environment();
        environment.remove("JAVA_TOOL_OPTIONS");
        environment.put("LC_ALL", "C");
        return builder.redirectOutput(file("stdout"))
                .redirectError(file("stderr"))
                .start();
    }

    private Ran ended(Process process) throws Exception {
        try {
            assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("it ends").isTrue();
        } finally {
            process.destroyForcibly();
        }
        return new Ran(
                process.exitValue(),
                Files.readString(file("stdout").toPath()),
                Files.readString(file("stderr").toPath()));
    }

    private File file(String name) {
        return folder.resolve(name).toFile();
    }

    /** What the process has worked so far: on a busy machine a better clock than the one on the wall. */
    private static double cpuSeconds(Process process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO).toMillis() / 1e3;
    }

    private interface Condition {
        boolean holds();
    }

    private static void waitUntil(Condition condition, Process process) throws InterruptedException {
        Instant latest = Instant.now().plusSeconds(60);
        while (!condition.holds()) {
            assertThat(process.isAlive()).as("it is still running").isTrue();
            assertThat(Instant.now()).isBefore(latest);
            Thread.sleep(50);
        }
    }
}
