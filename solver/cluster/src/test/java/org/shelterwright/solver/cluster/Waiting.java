package org.shelterwright.solver.cluster;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Waits for what a process brings about, up to a bound; what it writes into files tells nobody, so it is looked for again and again.
 *
 * @param name of the process, for messages
 * @param on the process; when it ends, nothing more is waited for
 * @param log the file with all that it says
 */
record Waiting(String name, Process on, Path log) {
    private static final long LOOK_AGAIN_MS = 20;

    /**
     * Waits until something is there.
     *
     * @param what it is, for the message
     * @throws IllegalStateException if the process ends before, or after the bound
     */
    void until(String what, Duration most, BooleanSupplier there) throws InterruptedException {
        long begin = System.nanoTime();
        boolean ended = false;
        while (!there.getAsBoolean()) {
            if (ended) {
                throw new IllegalStateException("The " + name + " ended, with exit status " + on.exitValue()
                        + ", before there was " + what + ". Its log:\n" + text());
            }
            if (System.nanoTime() - begin > most.toNanos()) {
                throw new IllegalStateException("The " + name + " runs for " + most.toSeconds()
                        + " s, and there is not yet " + what + ". Its log:\n" + text());
            }
            // What a process did at its very end is looked for once more.
            ended = on.waitFor(LOOK_AGAIN_MS, TimeUnit.MILLISECONDS);
        }
    }

    /** Waits until the process says some words. */
    void untilItSays(String words, Duration most) throws InterruptedException {
        until("\"" + words + "\" in its log", most, () -> text().contains(words));
    }

    private String text() {
        try {
            return Files.readString(log);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
