package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A program folder with the start script, in a path with blanks, and a stand-in for Java that shows what it was given, one word a line,
 * leaves an archive of classes where it is asked to, and ends as it is told.
 *
 * @param folder in which all of it lies
 * @param ends with which status Java ends
 */
record InstalledScript(Path folder, int ends) {
    private static final String STAND_IN = """
            #!/bin/sh
            if [ "$1" = -version ]; then echo 'openjdk version "VERSION" 2022-01-18' >&2; exit 0; fi
            for one; do
                case $one in -XX:ArchiveClassesAtExit=*) echo classes > "${one#*=}" ;; esac
                echo "<$one>"
            done
            exit "$ENDS"
            """;

    static InstalledScript in(Path folder, String version, int ends) throws IOException {
        InstalledScript installed = new InstalledScript(folder, ends);
        Files.createDirectories(installed.lib());
        Files.createDirectories(installed.script().getParent());
        Files.copy(Path.of("src/main/program/bin/shelterwright"), installed.script());
        Files.createDirectories(installed.java().getParent());
        Files.writeString(installed.java(), STAND_IN.replace("VERSION", version));
        assertThat(installed.java().toFile().setExecutable(true)
                        && installed.script().toFile().setExecutable(true))
                .isTrue();
        return installed;
    }

    /** The same whose Java ends with another status. */
    InstalledScript ending(int status) {
        return new InstalledScript(folder, status);
    }

    Path script() {
        return folder.resolve("some where/bin/shelterwright");
    }

    Path lib() {
        return folder.resolve("some where/lib");
    }

    Path java() {
        return folder.resolve("a jdk/bin/java");
    }

    /** The folder that the script may keep things in. */
    Path cache() {
        return folder.resolve("a cache");
    }

    Ran run(Map<String, String> variables, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(script().toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().remove("SHELTERWRIGHT_JAVA_OPTIONS");
        builder.environment()
                .putAll(Map.of(
                        "JAVA_HOME", folder.resolve("a jdk").toString(),
                        "XDG_CACHE_HOME", cache().toString(),
                        "ENDS", Integer.toString(ends)));
        builder.environment().putAll(variables);
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out, err);
    }
}
