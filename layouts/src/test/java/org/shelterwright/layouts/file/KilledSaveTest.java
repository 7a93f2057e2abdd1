package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed while it saves leaves the old or the new content whole. */
class KilledSaveTest {
    private static final int SIZE = 400_000;
    private static final int KILLS = 6;

    /** Saves over and over: a file of one letter, then of the next. */
    static final class Saver {
        public static void main(String[] arguments) {
            Path file = Path.of(arguments[0]);
            Fingerprint held = Fingerprint.of(file);
            for (int i = 0; ; i++) {
                held = new SafeSave().save(file, content((byte) ('a' + i % 26)), held);
            }
        }
    }

    private static byte[] content(byte letter) {
        byte[] bytes = new byte[SIZE];
        Arrays.fill(bytes, letter);
        return bytes;
    }

    @Test
    @Timeout(120)
    void aKilledSaveLeavesOneContentWhole(@TempDir Path folder) throws IOException, InterruptedException {
        Path file = folder.resolve("a.json");
        new SafeSave().save(file, content((byte) 'z'), Fingerprint.NONE);
        for (int i = 0; i < KILLS; i++) {
            Process saver = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xshare:auto",
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Saver.class.getName(),
                            file.toString())
                    .redirectErrorStream(true)
                    .start();
            try {
                awaitSaves(file, saver, 1 + 7 * i);
            } finally {
                saver.destroyForcibly().waitFor(30, TimeUnit.SECONDS);
            }

            byte[] left = Files.readAllBytes(file);
            assertThat(left).isEqualTo(content(left[0]));
            byte[] before = Files.readAllBytes(SafeSave.previous(file));
            assertThat(before).isEqualTo(content(before[0]));
            Files.write(file, content((byte) 'z'));
        }
    }

    /** Waits until the file was seen to change that often; the process goes on saving meanwhile. */
    private static void awaitSaves(Path file, Process saver, int changes) throws IOException {
        byte last = (byte) 'z';
        for (int seen = 0; seen < changes; ) {
            assertThat(saver.isAlive()).as("still saving").isTrue();
            byte now = Files.readAllBytes(file)[0];
            seen += now == last ? 0 : 1;
            last = now;
        }
    }
}
