package org.shelterwright.catalog.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

class JsonFormatTest {
    /** One component of each sort that files hold. */
    public record Sample(
            String id,
            Size size,
            @Nullable @Millimetres Integer height,
            List<Box> boxes,
            Set<QuarterTurn> turns,
            Map<String, Double> figures,
            boolean loose,
            @Nullable Pose pose,
            @Nullable Rect rect,
            @Nullable Face face,
            int count,
            Options options,
            @Nullable Long seed,
            @Nullable String note) {
        public Sample {
            if (count > 9) {
                throw new IllegalArgumentException("The count of " + count + " must be at most 9.");
            }
        }
    }

    /** A record that may be left out, since all of it may be. */
    public record Options(boolean first, @Nullable Double second) {}

    private static final JsonFormat<Sample> FORMAT = JsonFormat.of("shelterwright-sample", 2, Sample.class);
    private static final String HEAD = "{\"format\": \"shelterwright-sample\", \"version\": 2,\n";
    private static final String LEAST = "\"id\": \"a\", \"size\": [600, 800.5, \"19 in\"], \"count\": 3";

    private static Sample read(String keys) {
        return FORMAT.read((HEAD + keys + "\n}").getBytes(StandardCharsets.UTF_8), "a.json");
    }

    private static List<String> problems(String text) {
        return problems(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> problems(byte[] bytes) {
        InputException e = catchThrowableOfType(InputException.class, () -> FORMAT.read(bytes, "a.json"));
        assertThat(e).as("refused").isNotNull();
        return e.problems().stream().map(Problem::text).toList();
    }

    private static List<String> problemsOfKeys(String keys) {
        return problems(HEAD + keys + "\n}");
    }

    @Test
    void leavesOutWhatMayBeLeftOut() {
        Sample sample = read(LEAST);

        assertThat(sample)
                .isEqualTo(new Sample(
                        "a",
                        new Size(600_000, 800_500, 482_600),
                        null,
                        List.of(),
                        Set.of(),
                        Map.of(),
                        false,
                        null,
                        null,
                        null,
                        3,
                        new Options(false, null),
                        null,
                        null));
    }

    @Test
    void writesKeysInTheOrderOfTheRecordAndShortValuesOnOneLine() {
        Sample sample = new Sample(
                "rack-1",
                Size.ofMm(600, 800, 1200),
                44_450,
                List.of(Box.ofMm(0, 0, 0, 600, 800, 50), Box.ofMm(0, 0, 50, 600, 50, 1200)),
                Set.of(QuarterTurn.R270, QuarterTurn.R0, QuarterTurn.R90),
                Map.of("mass.person", 75.0),
                true,
                new Pose(Point.ofMm(-1, 2, 3), QuarterTurn.R180),
                Rect.ofMm(0, 1, 2, 3),
                Face.FRONT,
                4,
                new Options(false, 0.1),
                42L,
                "Größe: \"ja\"\nEnde");

        byte[] written = FORMAT.write(sample);

        assertThat(new String(written, StandardCharsets.UTF_8)).isEqualTo("""
                        {
                          "format": "shelterwright-sample",
                          "version": 2,
                          "id": "rack-1",
                          "size": [600, 800, 1200],
                          "height": 44.45,
                          "boxes": [
                            {"from": [0, 0, 0], "to": [600, 800, 50]},
                            {"from": [0, 0, 50], "to": [600, 50, 1200]}
                          ],
                          "turns": [0, 90, 270],
                          "figures": {"mass.person": 75},
                          "loose": true,
                          "pose": {"at": [-1, 2, 3], "yaw": 180},
                          "rect": {"from": [0, 1], "to": [2, 3]},
                          "face": "front",
                          "count": 4,
                          "options": {"second": 0.1},
                          "seed": 42,
                          "note": "Größe: \\"ja\\"\\nEnde"
                        }
                        """);
        assertThat(FORMAT.read(written, "again")).isEqualTo(sample);
    }

    @Test
    void tellsUnknownKeysWithTheNearestKnownOne() {
        assertThat(problemsOfKeys(LEAST + ",\n  \"hight\": 3"))
                .containsExactly(
                        "a.json, line 3, column 3: The key \"hight\" is not known in the file. Did you mean \"height\"?");
    }

    @Test
    void listsTheKnownKeysWhenNoneIsNear() {
        assertThat(problemsOfKeys(LEAST + ", \"pose\": {\"at\": [0, 0, 0], \"yaw\": 0, \"roll\": 1}"))
                .containsExactly("a.json, line 2, column 91: The key \"roll\" is not known in \"pose\"."
                        + " Known are: at, yaw.");
    }

    @Test
    void tellsSeveralProblemsAtOnce() {
        assertThat(problemsOfKeys("\"id\": \"a b\",\n\"size\": [1, 0, 2],\n\"count\": 1.5, \"turns\": [45]"))
                .containsExactly(
                        "a.json, line 2, column 7: \"id\" must be 1 to 80 letters from a to z, digits, dots, hyphens or"
                                + " underscores, beginning with a letter or digit, but is \"a b\".",
                        "a.json, line 3, column 9: \"size\": The size y = 0 mm must be above zero.",
                        "a.json, line 4, column 25: \"turns[0]\" must be a turn of 0, 90, 180 or 270 (degrees), but is 45.",
                        "a.json, line 4, column 10: \"count\" must be a whole number below 2 147 483 648, but is 1.5.");
    }

    @Test
    void tellsWhatAConstructorRefusesWithItsPlace() {
        assertThat(problemsOfKeys("\"id\": \"a\", \"size\": [1, 1, 1], \"count\": 10"))
                .containsExactly("a.json, line 1, column 1: The count of 10 must be at most 9.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"height\": true|\"height\" must be a length in millimetres, such as 1200.5, or with its unit, such as"
                        + " \"19 in\", but is true.",
                "\"height\": 0.0001|\"height\": The length 0.0001 mm is finer than a micrometre. Give at most three"
                        + " decimals of a millimetre.",
                "\"height\": 1e9|\"height\": The length 1000000000 mm is beyond 500 m. Maybe the unit is wrong.",
                "\"height\": \"3 furlongs\"|\"height\": \"3 furlongs\" is no length. Write millimetres, or a number with"
                        + " mm, cm, m, in or ft.",
                "\"height\": NaN|\"height\" must be a length in millimetres, such as 1200.5, or with its unit, such as"
                        + " \"19 in\", but is NaN.",
                "\"figures\": {\"a\": -Infinity}|\"figures.a\" must be a number, but is -Infinity.",
                "\"figures\": {\"a\": 1e40}|The number 1e40 is out of range: no quantity here is that great or small.",
                "\"figures\": {\"a\": 1e99999999999}|The number 1e99999999999 is out of range: no quantity here is that"
                        + " great or small.",
                "\"face\": \"frnt\"|\"face\" has the value \"frnt\", which is not known. Did you mean \"front\"?",
                "\"face\": 3|\"face\" must be one of front, rear, left, right, top, bottom, but is 3.",
                "\"rect\": {\"from\": [1, 2]}|The key \"to\" is missing in \"rect\".",
                "\"rect\": {\"from\": [1, 2], \"to\": [3]}|\"rect.to\" must be a list of 2 lengths [x, y] in millimetres,"
                        + " but is a list of 1.",
                "\"rect\": {\"from\": [5, 2], \"to\": [3, 4]}|\"rect\": The low corner of a rectangle must not be above its"
                        + " high corner.",
                "\"boxes\": {}|\"boxes\" must be a list in brackets, but is an object.",
                "\"boxes\": [null]|\"boxes[0]\" must be an object {\"from\": [x, y, z], \"to\": [x, y, z]}, but is null.",
                "\"loose\": \"yes\"|\"loose\" must be true or false, but is \"yes\".",
                "\"note\": 5|\"note\" must be a text in quotes, but is 5.",
                "\"note\": \"a\\u0000b\"|The text \"a b\" holds the character U+0000, which no text may hold. Remove it.",
                "\"note\": \"\\ud800\"|The text \" \" holds the character U+D800, which no text may hold. Remove it.",
                "\"id\": \"b\"|The key \"id\" is given twice in one object; the first time in line 2, column 1. Remove one"
                        + " of them.",
            })
    void refusesWithOneSentence(String key, String sentence) {
        assertThat(problemsOfKeys(LEAST + ", " + key))
                .singleElement()
                .asString()
                .startsWith("a.json, line ")
                .endsWith(": " + sentence);
    }

    @Test
    void tellsWhatIsMissing() {
        assertThat(problemsOfKeys("\"id\": \"a\", \"size\": [1, 1, 1]"))
                .containsExactly("a.json, line 1, column 1: The key \"count\" is missing in the file.");
    }

    @Test
    void takesNullForWhatMayBeLeftOutOnly() {
        assertThat(read(LEAST + ", \"note\": null").note()).isNull();
        assertThat(problemsOfKeys(LEAST + ", \"boxes\": null"))
                .singleElement()
                .asString()
                .endsWith("\"boxes\" must be a list in brackets, but is null.");
    }

    @Test
    void countsColumnsInCharacters() {
        assertThat(problemsOfKeys(LEAST + ",\n\"note\": \"Größe ÄÖÜ\", \"x\": 1"))
                .singleElement()
                .asString()
                .startsWith("a.json, line 3, column 22: The key \"x\"");
    }
}
