package org.shelterwright.solver.cluster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WaitingTest {
    private static final Duration LONG = Duration.ofMinutes(1);

    @TempDir
    private Path folder;

    private Process process;

    @AfterEach
    void end() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Test
    void goesOnWhenTheProcessSaysTheWords() throws IOException, InterruptedException {
        Waiting waiting = start("--version");

        waiting.untilItSays(System.getProperty("java.version"), LONG);

        assertThat(process.waitFor()).isZero();
    }

    @Test
    void looksOnceMoreWhenTheProcessHasEnded() throws IOException, InterruptedException {
        Waiting waiting = start("--version");
        process.waitFor();
        Queue<Boolean> looks = new ArrayDeque<>(List.of(false, true));

        waiting.until("a second look", LONG, looks::remove);

        assertThat(looks).isEmpty();
    }

    @Test
    void aProcessThatEndsBeforeIsToldWithItsLog() throws IOException {
        Waiting waiting = start("--no-such-option");

        assertThatThrownBy(() -> waiting.until("13 lines of results", LONG, () -> false))
                .hasMessageStartingWith(
                        "The driver ended, with exit status 1, before there was 13 lines of results. Its log:\n")
                .hasMessageContaining("--no-such-option");
    }

    @Test
    void aProcessThatIsTooSlowIsToldWithItsLog() throws IOException {
        // Without more it reads a program from standard input, which stays open.
        Waiting waiting = start("--source", "17", "/dev/stdin");

        assertThatThrownBy(() -> waiting.until("13 lines of results", Duration.ZERO, () -> false))
                .hasMessage("The driver runs for 0 s, and there is not yet 13 lines of results. Its log:\n");
    }

    private Waiting start(String... options) throws IOException {
        Path log = folder.resolve("driver.log");
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of(options));
        process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        return new Waiting("driver", process, log);
    }
}
