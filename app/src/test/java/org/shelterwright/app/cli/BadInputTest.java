package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every bad input through the real command: its status, its sentence with its place, and nothing changed. */
class BadInputTest {

    @TempDir
    Path folder;

    static Stream<Arguments> brokenBriefs() {
        String brief = Briefs.smallPost();
        return Stream.of(
                Arguments.of("unknown key", brief.replace("\"crew\"", "\"crw\""), List.of("line 13", "crw", "crew")),
                Arguments.of("cut in half", brief.substring(0, brief.length() / 2), List.of("line")),
                Arguments.of("empty", "", List.of("small-post.json")),
                Arguments.of("no JSON", "Equipment list\n", List.of("line 1")),
                Arguments.of(
                        "newer version",
                        brief.replace("\"version\": 1", "\"version\": 9"),
                        List.of("line 3", "9", "newer release")),
                Arguments.of("other format", brief.replace("-brief", "-item"), List.of("line 2", "shelterwright-item")),
                Arguments.of("unknown body", brief.replace("box-4200", "box-420"), List.of("line 6", "box-4200")),
                Arguments.of("unknown item", brief.replace("rack-19-24u", "rack-19-25u"), List.of("line 9", "rack-19")),
                Arguments.of("duplicate id", brief.replace("\"desk\"", "\"rack-1\""), List.of("rack-1", "twice")),
                Arguments.of("not a number", brief.replace("\"crew\": 2", "\"crew\": NaN"), List.of("line 13")),
                Arguments.of("negative crew", brief.replace("\"crew\": 2", "\"crew\": -2"), List.of("line 13", "-2")),
                Arguments.of(
                        "deep nesting",
                        brief.replace("\"crew\": 2", "\"note\": " + "[".repeat(200_000)),
                        List.of("line 13", "deep")),
                Arguments.of("empty list", brief.replaceAll("(?s)\\{ \"id.*?\\}\\s*\\]", "]"), List.of("no units")),
                Arguments.of(
                        "larger than the body",
                        brief.replace("box-4200", "panel-van").replace("rack-19-24u", "rack-19-40u-two-side"),
                        List.of("rack-1", "larger")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("brokenBriefs")
    void brokenBriefIsRefusedWithItsPlace(String what, String content, List<String> said) throws IOException {
        Path file = Briefs.write(folder, "small-post.json", content);

        Ran ran = Ran.of("fit", file, "--out", folder.resolve("out"));

        assertThat(ran.status()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith(file.toString()).contains(said).doesNotContain("Exception");
        assertThat(ran.err().lines()).allSatisfy(line -> assertThat(line).matches(".*[.?]"));
        assertThat(files()).containsExactly("small-post.json");
    }

    @Test
    void missingFileIsNamed() {
        Ran ran = Ran.of("check", folder.resolve("gone.json"));

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip())
                .isEqualTo(folder.resolve("gone.json") + ": There is no such file. Check its name and folder.");
    }

    @Test
    void folderInPlaceOfAFileIsNamed() {
        Ran ran = Ran.of("check", folder);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip())
                .isEqualTo(folder + ": This is a folder, but a file is needed. Name a file in it.");
    }

    @Test
    void nameThatNoFileCanHaveIsRefused() {
        Ran ran = Ran.of("check", "brief\0.json");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("This cannot be the name of a file.");
    }

    @Test
    void hugeFileIsNotRead() throws IOException {
        Path file = folder.resolve("huge.json");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(100_000_000);
        }

        Ran ran = Ran.of("check", file);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).startsWith(file + ": The file has 100.0 MB; files of up to");
    }

    @Test
    void unknownSampleIsNamedWithTheNearestOne() {
        Ran ran = Ran.of("fit", "sample:river-pots");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip())
                .isEqualTo("sample:river-pots: There is no such sample. Did you mean \"river-post\"?");
    }

    @Test
    void folderThatMayNotBeWrittenToIsRefusedBeforeTheSearch() {
        // The kernel's own file system takes no folders, from nobody: so this holds for the superuser too.
        Ran ran = Ran.with(
                (request, observer, stop) -> {
                    throw new AssertionError("the search must not begin");
                },
                "fit",
                Briefs.smallPost(folder),
                "--out",
                "/sys/kernel/shelterwright");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip())
                .isEqualTo("/sys/kernel/shelterwright: The folder may not be written to."
                        + " Choose another, or ask for the right to write there.");
    }

    @Test
    void fileInPlaceOfTheFolderToWriteIntoIsRefused() {
        Path file = Briefs.smallPost(folder);

        Ran ran = Ran.of("fit", file, "--moves", "1000", "--out", file);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip())
                .isEqualTo(file + ": A folder is needed here, but there is a file of that name. Name another folder.");
        assertThat(file).hasContent(Briefs.smallPost());
    }

    @Test
    void unknownRuleSetOrLimitIsNamed() {
        Path file = Briefs.write(
                folder,
                "small-post.json",
                Briefs.smallPost().replace("\"crew\": 2", "\"crew\": 2, \"limits\": {\"mass.persn\": 90}"));

        Ran ran = Ran.of("check", file);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("line 13", "mass.persn", "Did you mean \"mass.person\"?");
    }

    @Test
    void optionsOutOfRangeAreRefused() {
        Path file = Briefs.smallPost(folder);

        assertThat(Ran.of("fit", file, "--threads", "0").err())
                .contains("--threads: This is 0, but must be from 1 to 1024.");
        assertThat(Ran.of("fit", file, "--alternatives", "99").err())
                .contains("--alternatives: This is 99, but must be from 1 to 50.");
        assertThat(Ran.of("fit", file, "--moves", "0").err()).contains("--moves: This is 0, but must be from 1 to ");
        assertThat(Ran.of("fit", file, "--time", "0s").err()).contains("\"0s\" is no time.");
        assertThat(Ran.of("fit", file, "--time", "5 parsec").err()).contains("\"5 parsec\" is no time.");
        assertThat(Ran.of("fit", file, "--seed", "x").err()).contains("--seed");
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
