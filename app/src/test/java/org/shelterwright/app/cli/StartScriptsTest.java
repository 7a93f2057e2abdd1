package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.condition.OS.WINDOWS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.Shelterwright;

/** The shell script runs here; the batch file cannot, so it is held to say the same. */
class StartScriptsTest {
    private static final Path FOLDER = Path.of("src/main/program/bin");

    @TempDir
    Path folder;

    @Test
    @DisabledOnOs(WINDOWS)
    void argumentsReachTheProgramAsTheyAreAndItsStatusComesBack() throws Exception {
        Path script = installed("17.0.2", 42);

        Ran ran = run(script, Map.of(), "fit", "a brief.json", "--name", "50 % & more!", "");

        assertThat(ran.status()).isEqualTo(42);
        assertThat(ran.outLines())
                .containsExactly(
                        "<-cp>",
                        "<" + script.getParent().getParent().toRealPath() + "/lib/*>",
                        "<" + Shelterwright.class.getName() + ">",
                        "<fit>",
                        "<a brief.json>",
                        "<--name>",
                        "<50 % & more!>",
                        "<>");
    }

    @Test
    @DisabledOnOs(WINDOWS)
    void optionsOfTheJavaMachineBecomeWordsBeforeTheClassPath() throws Exception {
        Ran ran = run(installed("21", 0), Map.of("SHELTERWRIGHT_JAVA_OPTIONS", "-Xmx4g -Dx=1"), "--version");

        assertThat(ran.outLines()).startsWith("<-Xmx4g>", "<-Dx=1>", "<-cp>").endsWith("<--version>");
    }

    @Test
    @DisabledOnOs(WINDOWS)
    void aJavaThatIsMissingOrTooOldIsSaidInOneSentence() throws Exception {
        Path script = installed("1.8.0_202", 0);
        Path java = folder.resolve("a jdk/bin/java");

        Ran old = run(script, Map.of());
        Ran gone = run(script, Map.of("JAVA_HOME", "/no where"));

        assertThat(old.status()).isEqualTo(3);
        assertThat(old.err())
                .isEqualTo("shelterwright: " + java
                        + " is Java 1.8.0_202; 17 or newer is needed. Set JAVA_HOME to one.\n");
        assertThat(gone.status()).isEqualTo(3);
        assertThat(gone.err())
                .isEqualTo("shelterwright: JAVA_HOME is /no where, which holds no bin/java. Set it to a Java 17 or"
                        + " newer.\n");
    }

    @Test
    void bothScriptsStartTheSameClassWithTheSameFlags() throws Exception {
        String shell = String.join("\n", shell())
                .replace(" \\\n   ", "")
                .lines()
                .filter(line -> line.startsWith("exec \"$java\""))
                .map(line -> line.substring("exec ".length()).replaceAll("\\$\\{archive:[^}]*} ", ""))
                .findFirst()
                .orElseThrow();
        String batch = line(batch(), "\"%own_java%\" ");

        assertThat(inWordsOfTheShell(batch)).isEqualTo(shell);
        assertThat(batch).contains(" " + Shelterwright.class.getName() + " ");
    }

    @Test
    void bothScriptsSayTheSameOfAJavaThatDoesNotDo() throws Exception {
        List<String> shell = matches(Pattern.compile("fail \"(.*)\""), shell());
        List<String> batch = matches(Pattern.compile("echo shelterwright: (.*) 1>&2"), batch());

        assertThat(batch)
                .isNotEmpty()
                .allSatisfy(text -> assertThat(shell)
                        .contains(inWordsOfTheShell(text).replace("\"", "").replace("java.exe", "java")));
        assertThat(batch)
                .as("all but one of links, which a batch file does not follow")
                .hasSize(shell.size() - 1);
    }

    @Test
    void bothScriptsAskForTheSameJavaAndFailWithTheSameStatus() throws Exception {
        assertThat(matches(Pattern.compile("\"\\$major\" -ge (\\d+)"), shell())).containsExactly("17");
        assertThat(matches(Pattern.compile("if %own_major% lss (\\d+) "), batch()))
                .containsExactly("17");
        assertThat(matches(Pattern.compile("exit (\\d)"), shell())).containsExactly("3");
        assertThat(matches(Pattern.compile("exit /b (\\S+)"), batch()))
                .containsExactly("3", "3", "%errorlevel%", "3", "3", "0");
    }

    /** The status must be read right after the program ended; each failure ends right after its sentence. */
    @Test
    void theBatchFileHandsOnTheStatusAtOnce() throws Exception {
        List<String> lines = batch();

        assertThat(lines.get(lines.indexOf(line(lines, "\"%own_java%\" ")) + 1)).isEqualTo("exit /b %errorlevel%");
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith("echo ")) {
                assertThat(lines.get(i + 1)).isEqualTo("exit /b 3");
            }
        }
    }

    /** A path with blanks, brackets or an ampersand ends a command where it stands without quotes. */
    @Test
    void everyPathOfTheBatchFileStandsInQuotes() throws Exception {
        for (String line : batch()) {
            String outside =
                    line.startsWith("rem ") ? "" : line.replaceAll("\"=%", "%").replaceAll("\"[^\"]*\"", "");
            assertThat(outside)
                    .as(line)
                    .doesNotContain("\"", "%own_home%", "%own_java%", "%own_jdk%", "%JAVA_HOME", "%~dp0");
        }
    }

    @Test
    void theBatchFileHasEveryPartThatItGoesToAndLinesThatItsInterpreterReads() throws Exception {
        String text = Files.readString(FOLDER.resolve("shelterwright.bat"), StandardCharsets.US_ASCII);

        assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(matches(Pattern.compile("(?:goto |call :)([a-z_]+)"), batch()))
                .isSubsetOf(matches(Pattern.compile("^:([a-z_]+)"), batch()));
    }

    /** A program folder in a path with blanks, with a Java that shows its arguments line by line and ends as told. */
    private Path installed(String version, int status) throws IOException {
        Path bin = Files.createDirectories(folder.resolve("some where/bin"));
        Path java = Files.createDirectories(folder.resolve("a jdk/bin")).resolve("java");
        Files.writeString(
                java,
                "#!/bin/sh\nif [ \"$1\" = -version ]; then echo 'openjdk version \"" + version
                        + "\" 2022-01-18' >&2; exit 0; fi\nfor one in \"$@\"; do echo \"<$one>\"; done\nexit " + status
                        + "\n");
        Path script = Files.copy(FOLDER.resolve("shelterwright"), bin.resolve("shelterwright"));
        assertThat(java.toFile().setExecutable(true) && script.toFile().setExecutable(true))
                .isTrue();
        return script;
    }

    private Ran run(Path script, Map<String, String> variables, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(script.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().remove("SHELTERWRIGHT_JAVA_OPTIONS");
        builder.environment().put("JAVA_HOME", folder.resolve("a jdk").toString());
        builder.environment().putAll(variables);
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out, err);
    }

    private static List<String> shell() throws IOException {
        return Files.readAllLines(FOLDER.resolve("shelterwright"));
    }

    private static List<String> batch() throws IOException {
        return Files.readAllLines(FOLDER.resolve("shelterwright.bat"));
    }

    private static String inWordsOfTheShell(String batch) {
        return batch.replace("%own_java%", "$java")
                .replace("%own_home%", "$home")
                .replace("%own_jdk%", "$JAVA_HOME")
                .replace("%own_version%", "$version")
                .replace("%SHELTERWRIGHT_JAVA_OPTIONS%", "$SHELTERWRIGHT_JAVA_OPTIONS")
                .replace("%*", "\"$@\"")
                .replace('\\', '/');
    }

    private static String line(List<String> lines, String start) {
        List<String> found =
                lines.stream().filter(line -> line.startsWith(start)).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<String> matches(Pattern pattern, List<String> lines) {
        return lines.stream()
                .flatMap(line -> {
                    Matcher matcher = pattern.matcher(line);
                    return matcher.find() ? Stream.of(matcher.group(1)) : Stream.empty();
                })
                .toList();
    }
}
