package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The archive of classes that the start script keeps for the next window. */
@DisabledOnOs(OS.WINDOWS)
class KeptClassesTest {
    @TempDir
    Path folder;

    private InstalledScript script;

    @BeforeEach
    void install() throws IOException {
        script = InstalledScript.in(folder, "17.0.9", 0);
    }

    @Test
    void theFirstWindowLeavesAnArchiveOfClassesThatTheNextOneUses() throws Exception {
        List<String> first = run("desk", "my layout.json");
        List<String> next = run("desk", "my layout.json");

        assertThat(first)
                .filteredOn(word -> word.startsWith("<-XX:ArchiveClassesAtExit="))
                .hasSize(1);
        assertThat(first).endsWith("<desk>", "<my layout.json>");
        assertThat(archives()).hasSize(1);
        assertThat(next)
                .contains("<-XX:SharedArchiveFile=" + archives().get(0) + ">")
                .endsWith("<desk>", "<my layout.json>");
        assertThat(next).noneMatch(word -> word.startsWith("<-XX:ArchiveClassesAtExit="));
    }

    @Test
    void afterTheProgramHasFailedNoArchiveIsKept() throws Exception {
        assertThat(script.ending(2).run(Map.of(), "desk", "nothing.json").status())
                .isEqualTo(2);

        assertThat(archives()).isEmpty();
    }

    @Test
    void anotherProgramOrJavaGetsAnArchiveOfItsOwnInPlaceOfTheOld() throws Exception {
        run("desk");
        Path before = archives().get(0);
        Files.writeString(script.lib().resolve("more.jar"), "more");

        run("desk");

        assertThat(archives()).hasSize(1).doesNotContain(before);
    }

    @Test
    void whatNeedsNoWindowNeedsNoArchive() throws Exception {
        assertThat(run("check", "my layout.json"))
                .noneMatch(word -> word.startsWith("<-XX:"))
                .endsWith("<check>", "<my layout.json>");
        assertThat(script.cache()).doesNotExist();
    }

    private List<Path> archives() throws IOException {
        try (var files = Files.list(script.cache().resolve("shelterwright"))) {
            return files.toList();
        }
    }

    /** Runs the script, which must end well; gives what Java was given. */
    private List<String> run(String... arguments) throws Exception {
        Ran ran = script.run(Map.of(), arguments);
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran.outLines();
    }
}
