package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

/** A real process with a real window, killed in the middle of an edit. */
class DeskCrashTest extends WindowTest {
    @TempDir
    Path folder;

    @Test
    void whatWasDoneBeforeTheKillIsOfferedAndTaken() throws Exception {
        Layout start =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
        Path file = folder.resolve("post.json");
        LayoutFiles.write(start, file, Fingerprint.NONE);
        Path unsaved = folder.resolve("post.unsaved.json");
        Process process = start(file);
        try {
            await("the change is kept beside the file", () -> process.isAlive() && Files.exists(unsaved));
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as("killed, not ended").isEqualTo(128 + 9);
        assertThat(LayoutFiles.read(file).layout()).as("the file is as it was").isEqualTo(start);

        ScriptedQuestions questions = new ScriptedQuestions().answering("Take the unsaved work");
        Desks.Desk desk = onDesk(() -> Desks.open(file.toString(), folder.resolve("user"), questions));

        assertThat(questions.asked()).hasSize(1);
        assertThat(questions.asked().get(0))
                .matches("Unsaved work was found: The window was not closed properly\\. Unsaved work was kept"
                        + " \\(today, \\d\\d:\\d\\d\\)\\. It differs from the file in \\d+ things?\\.");
        Layout recovered = onDesk(() -> desk.window().session().now().layout());
        assertThat(recovered).isEqualTo(new TakeOutUnit("rack-1").apply(start));
        assertThat(onDesk(() -> desk.window().session().now().history().undoNames()))
                .containsExactly("Take unsaved work");
        onDesk(() -> {
            desk.window().stage().hide();
            return null;
        });
    }

    private Process start(Path file) throws Exception {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        CrashingDesk.class.getName(),
                        file.toString(),
                        folder.resolve("user").toString())
                .redirectErrorStream(true)
                .redirectOutput(new File(folder.toFile(), "process.log"))
                .start();
    }
}
