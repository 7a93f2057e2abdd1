package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start script with a stand-in for Java that says what it was given, one word a line, and ends as it is told. */
@DisabledOnOs(OS.WINDOWS)
class KeptClassesTest {
    private static final String STAND_IN = """
            #!/bin/sh
            if [ "$1" = -version ]; then echo 'openjdk version "17.0.9"' >&2; exit 0; fi
            for one; do
                case $one in -XX:ArchiveClassesAtExit=*) echo classes > "${one#*=}" ;; esac
                echo "$one"
            done
            exit "${ENDS:-0}"
            """;

    @TempDir
    Path folder;

    private Path script;
    private Path cache;

    @BeforeEach
    void install() throws IOException {
        cache = folder.resolve("a cache");
        script = folder.resolve("program/bin/shelterwright");
        Files.createDirectories(script.getParent());
        Files.createDirectories(folder.resolve("program/lib"));
        Files.copy(Path.of("src/main/program/bin/shelterwright"), script);
        Path java = folder.resolve("java/bin/java");
        Files.createDirectories(java.getParent());
        Files.writeString(java, STAND_IN);
        assertThat(java.toFile().setExecutable(true)).isTrue();
    }

    @Test
    void theFirstWindowLeavesAnArchiveOfClassesThatTheNextOneUses() throws Exception {
        List<String> first = run(0, "desk", "my layout.json");
        List<String> next = run(0, "desk", "my layout.json");

        assertThat(first)
                .filteredOn(word -> word.startsWith("-XX:ArchiveClassesAtExit="))
                .hasSize(1);
        assertThat(first).endsWith("desk", "my layout.json");
        assertThat(archives()).hasSize(1);
        assertThat(next).contains("-XX:SharedArchiveFile=" + archives().get(0)).endsWith("desk", "my layout.json");
        assertThat(next).noneMatch(word -> word.startsWith("-XX:ArchiveClassesAtExit="));
    }

    @Test
    void afterTheProgramHasFailedNoArchiveIsKept() throws Exception {
        run(2, "desk", "nothing.json");

        assertThat(archives()).isEmpty();
    }

    @Test
    void anotherProgramOrJavaGetsAnArchiveOfItsOwnInPlaceOfTheOld() throws Exception {
        run(0, "desk");
        Path before = archives().get(0);
        Files.writeString(folder.resolve("program/lib/more.jar"), "more");

        run(0, "desk");

        assertThat(archives()).hasSize(1).doesNotContain(before);
    }

    @Test
    void whatNeedsNoWindowNeedsNoArchive() throws Exception {
        assertThat(run(0, "check", "my layout.json"))
                .noneMatch(word -> word.startsWith("-XX:"))
                .endsWith("check", "my layout.json");
        assertThat(cache).doesNotExist();
    }

    private List<Path> archives() throws IOException {
        try (var files = Files.list(cache.resolve("shelterwright"))) {
            return files.toList();
        }
    }

    /** Runs the script, which must end with a status; gives what Java was given. */
    private List<String> run(int ends, String... arguments) throws Exception {
        List<String> line = new ArrayList<>(List.of("sh", script.toString()));
        line.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
        builder.environment()
                .putAll(Map.of(
                        "JAVA_HOME", folder.resolve("java").toString(),
                        "XDG_CACHE_HOME", cache.toString(),
                        "ENDS", String.valueOf(ends)));
        Process process = builder.start();
        List<String> words =
                new String(process.getInputStream().readAllBytes()).lines().toList();
        assertThat(process.waitFor()).isEqualTo(ends);
        return words;
    }
}
