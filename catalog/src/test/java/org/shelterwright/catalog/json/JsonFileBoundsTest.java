package org.shelterwright.catalog.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are no files of ours at all. */
class JsonFileBoundsTest {
    /** Anything with a list in it. */
    public record Note(String id, String text) {}

    private static final JsonFormat<Note> FORMAT = JsonFormat.of("shelterwright-note", 3, Note.class);

    private static void assertRefused(String text, String message) {
        assertThatThrownBy(() -> FORMAT.read(text.getBytes(StandardCharsets.UTF_8), "n.json"))
                .isInstanceOf(InputException.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``|n.json: The file is empty, but one JSON object is needed.",
                "[1, 2]|n.json, line 1, column 1: The file must hold one JSON object in braces, but holds a list.",
                "{} {}|n.json, line 1, column 4: There is more text after the end of the object. Remove it.",
                "{\"format\": \"a\", \"version|n.json, line 1, column 25: The file ends in the middle of a list or object"
                        + " that begins in line 1, column 1. Maybe it was cut off: get it again from where it came.",
                "{\"a\": tru|n.json, line 1, column 7: The file ends in the middle of a list or object"
                        + " that begins in line 1, column 1. Maybe it was cut off: get it again from where it came.",
                "{\"a\": 1 \"b\": 2}|n.json, line 1, column 9: The file is not JSON. The character \"\"\" is not expected"
                        + " here. Maybe a comma, a quote or a bracket is missing or too many at or before this place.",
                "{\"a\": 1,}|n.json, line 1, column 9: The file is not JSON. The character \"}\" is not expected"
                        + " here. Maybe a comma, a quote or a bracket is missing or too many at or before this place.",
                "{}|n.json, line 1, column 1: The key \"format\" is missing in the file.",
            })
    void refusesWhatIsNoJsonObject(String text, String message) {
        if (text.equals("{}")) {
            assertRefused(
                    text,
                    message + System.lineSeparator()
                            + "n.json, line 1, column 1: The key \"version\" is missing in the file.");
        } else {
            assertRefused(text, message);
        }
    }

    @Test
    void refusesAnotherFormatAndNamesBoth() {
        assertRefused(
                "{\"format\": \"shelterwright-brief\", \"version\": 1}",
                "n.json, line 1, column 12: This is a \"shelterwright-brief\" file, but a \"shelterwright-note\" file is"
                        + " needed here.");
    }

    @Test
    void refusesANewerVersion() {
        assertRefused(
                "{\"format\": \"shelterwright-note\", \"version\": 4, \"what\": 1}",
                "n.json, line 1, column 45: This file has version 4 of \"shelterwright-note\"; this program reads up to"
                        + " version 3. Use a newer release of the program.");
    }

    @Test
    void refusesAVersionBelowOne() {
        assertRefused(
                "{\"format\": \"shelterwright-note\", \"version\": 0}",
                "n.json, line 1, column 45: The version must be from 1 to 3, but is 0.");
    }

    @Test
    void refusesAnOldVersionThatNothingUpgrades() {
        assertRefused(
                "{\"format\": \"shelterwright-note\", \"version\": 1}",
                "n.json: This file has version 1 of \"shelterwright-note\", which is no longer read. Open and save it with"
                        + " an older release first.");
    }

    @Test
    void upgradesAnOldVersionStepByStep() {
        JsonFormat<Note> format = FORMAT.withMigration(1, content -> content.rename("name", "body"))
                .withMigration(2, content -> {
                    content.rename("body", "text");
                    content.remove("colour");
                    content.addText("id", "n");
                });

        Note note = format.read(
                "{\"format\": \"shelterwright-note\", \"version\": 1, \"name\": \"hello\", \"colour\": 3}"
                        .getBytes(StandardCharsets.UTF_8),
                "old.json");

        assertThat(note).isEqualTo(new Note("n", "hello"));
    }

    @Test
    void refusesDeepNestingBeforeItHurts() {
        assertRefused(
                "{\"a\": " + "[".repeat(100_000),
                "n.json, line 1, column 70: Lists and objects are nested more than 64 deep. No file of this program is.");
    }

    @Test
    void refusesLongNumbersAndTexts() {
        assertRefused(
                "{\"a\": " + "9".repeat(500) + "}",
                "n.json, line 1, column 7: The number 99999999999999999999… has 500 characters; at most 40 are read.");
        assertRefused(
                "{\"a\": \"" + "b".repeat(20_000) + "\"}",
                "n.json, line 1, column 7: The text has 20000 characters; at most 10000 are read.");
        assertRefused(
                "{\"a\": " + "9".repeat(5_000) + "}",
                "n.json: The file is not JSON. Check it where it was last changed.");
    }

    @Test
    void refusesTextThatIsNotUtf8() {
        assertThatThrownBy(() -> FORMAT.read(new byte[] {'{', (byte) 0xC3, '}'}, "n.json"))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "n.json: The file is no text in UTF-8. Maybe it is no JSON file; otherwise save it as UTF-8.");
    }

    @Test
    void readsAFileThatBeginsWithAByteOrderMark() {
        String text = "\uFEFF{\"format\": \"shelterwright-note\", \"version\": 3, \"id\": \"a\", \"text\": \"\"}";

        assertThat(FORMAT.read(text.getBytes(StandardCharsets.UTF_8), "n.json")).isEqualTo(new Note("a", ""));
    }

    @Test
    void refusesAHugeFileWithoutReadingIt(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("huge.json");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(104_857_600);
        }

        assertThatThrownBy(() -> FORMAT.read(file))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        file
                                + ": The file has 104.9 MB; files of up to 20 MB are read. Maybe it is not the file that you meant.");
    }

    @Test
    void refusesMissingFilesAndFolders(@TempDir Path folder) {
        assertThatThrownBy(() -> FORMAT.read(folder))
                .hasMessage(folder + ": This is a folder, but a file is needed. Name a file in it.");
        assertThatThrownBy(() -> FORMAT.read(folder.resolve("x.json")))
                .hasMessage(folder.resolve("x.json") + ": There is no such file. Check its name and folder.");
    }
}
