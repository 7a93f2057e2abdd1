package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.condition.OS.WINDOWS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
        InstalledScript script = InstalledScript.in(folder, "17.0.2", 42);

        Ran ran = script.run(Map.of(), "fit", "a brief.json", "--name", "50 % & more!", "");

        assertThat(ran.status()).isEqualTo(42);
        assertThat(ran.outLines())
                .containsExactly(
                        "<-cp>",
                        "<" + script.lib().toRealPath() + "/*>",
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
        Ran ran = InstalledScript.in(folder, "21", 0)
                .run(Map.of("SHELTERWRIGHT_JAVA_OPTIONS", "-Xmx4g -Dx=1"), "--version");

        assertThat(ran.outLines()).startsWith("<-Xmx4g>", "<-Dx=1>", "<-cp>").endsWith("<--version>");
    }

    @Test
    @DisabledOnOs(WINDOWS)
    void aJavaThatIsMissingOrTooOldIsSaidInOneSentence() throws Exception {
        InstalledScript script = InstalledScript.in(folder, "1.8.0_202", 0);

        Ran old = script.run(Map.of());
        Ran gone = script.run(Map.of("JAVA_HOME", "/no where"));

        assertThat(old.status()).isEqualTo(3);
        assertThat(old.err())
                .isEqualTo("shelterwright: " + script.java()
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
