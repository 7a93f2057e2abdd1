package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.layout.Layout;

class LayoutFilesTest {
    private static String golden(int version) throws IOException {
        try (InputStream in = LayoutFilesTest.class.getResourceAsStream("layout-" + version + ".json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static OpenedLayout read(String text) {
        return LayoutFiles.read(new InputFile("l.json", text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void readsTheGoldenFileOfVersion1() throws IOException {
        OpenedLayout opened = read(golden(1));

        assertThat(opened.layout()).isEqualTo(SmallPost.layout());
        assertThat(opened.doubts()).isEmpty();
    }

    @Test
    void writesTheGoldenFileOfVersion1() throws IOException {
        assertThat(new String(LayoutFiles.bytes(SmallPost.layout()), StandardCharsets.UTF_8))
                .isEqualTo(golden(1));
    }

    @Test
    void writesAndReadsFiles(@TempDir Path folder) {
        Path file = folder.resolve("l.json");
        Layout layout = SmallPost.layout();

        Fingerprint written = LayoutFiles.write(layout, file, Fingerprint.NONE);
        OpenedLayout opened = LayoutFiles.read(file);

        assertThat(opened.layout()).isEqualTo(layout);
        assertThat(opened.fingerprint()).isEqualTo(written);
    }

    @Test
    void tellsACopyThatWasChangedByHand() throws IOException {
        OpenedLayout opened = read(golden(1).replace("\"size\": [800, 600, 1800]", "\"size\": [800, 600, 1801]"));

        assertThat(opened.doubts())
                .singleElement()
                .satisfies(doubt -> assertThat(doubt.sentence())
                        .isEqualTo(
                                "The copy of item \"rack\" in this file was changed since the program saved it. Look at it"
                                        + " before trusting its figures."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"unit\": \"rack-1\"|\"unit\": \"rak-1\"|The unit \"rak-1\" is not known. Did you mean \"rack-1\"?",
                "\"host\": \"table-1\"|\"host\": \"table-2\"|The unit \"printer-1\" is mounted on or under the unit"
                        + " \"table-2\", which is not placed. Place that one too, or give another host.",
                "\"host\": \"table-1\"|\"host\": \"tray-1\"|The unit \"printer-1\" is carried by itself in the end, or"
                        + " through more than 16 other units. Give it another host.",
                "\"at\": [3200, 0, 0]|\"at\": [3200000, 0, 0]|\"placements[0].station.pose.at[0]\": The length 3200000 mm is"
                        + " beyond 500 m. Maybe the unit is wrong.",
                "\"at\": [3200, 0, 0]|\"at\": [320000, 0, 0]|The unit \"rack-1\" lies more than 100 m from the body. Lengths"
                        + " are in millimetres: correct it.",
                "\"item\": \"printer\"|\"item\": \"printr\"|The item \"printr\" is not known. Did you mean \"printer\"?",
                "\"from\": \"rack-1/power\"|\"from\": \"rack-1/powr\"|The end \"rack-1/powr\" of wire \"w1\" names a port that"
                        + " unit rack-1 does not have. Did you mean \"power\"?",
                "\"carrier\": \"truck\"|\"carrier\": \"trailer\"|The carrier of the brief is \"trailer\", but the parts hold"
                        + " \"truck\". Make them the same.",
                "\"massKg\": 40|\"massKg\": 40000|The mass of 40000 kg of item rack makes 46296 kg/m³ over its size,"
                        + " denser than lead. Correct the mass (kg) or the size (mm).",
            })
    void refusesWhatDoesNotFitTogether(String old, String changed, String sentence) throws IOException {
        assertThat(golden(1).contains(old)).as(old).isTrue();

        assertThatThrownBy(() -> read(golden(1).replaceFirst(Pattern.quote(old), changed)))
                .isInstanceOf(InputException.class)
                .satisfies(e -> assertThat(((InputException) e).problems()).anySatisfy(problem -> {
                    assertThat(problem.sentence()).isEqualTo(sentence);
                    assertThat(problem.where()).startsWith("l.json, line ");
                }));
    }
}
