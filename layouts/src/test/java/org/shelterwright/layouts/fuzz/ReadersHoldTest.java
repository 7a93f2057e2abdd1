package org.shelterwright.layouts.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord;
import org.shelterwright.layouts.asbuilt.Scales;
import org.shelterwright.layouts.asbuilt.Weighing;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.CatalogChanges;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/** Whatever a file holds, a reader gives a value or a list of problems, in bounded time and memory. */
class ReadersHoldTest {
    private static final int COUNT = 1_000;
    private static final Duration LONGEST = Duration.ofSeconds(30);

    private static final String RULE_SET = """
            {
              "format": "shelterwright-rule-set", "version": 1, "id": "own", "name": "Own", "axleRules": "eu-96-53",
              "rules": [
                {"figure": "access.walkway-width", "value": 600, "source": {"document": "A", "trust": "stated"}},
                {"figure": "mass.person", "value": 75, "source": {"document": "B", "clause": "1", "trust": "seen"}}
              ]
            }
            """;

    private static final String FASTENERS = """
            {
              "format": "shelterwright-fasteners", "version": 1, "id": "m", "name": "Metric",
              "source": {"document": "A", "trust": "from-memory"},
              "fasteners": [{"thread": "M10", "grade": "8.8", "diameterMm": 10, "pitchMm": 1.5, "stressAreaMm2": 58,
                             "proofN": 33700, "ultimateN": 46400}]
            }
            """;

    private static final String RECORD = """
            {
              "format": "shelterwright-as-built", "version": 1, "layout": "post", "pack": "0123456789ab",
              "exported": "2026-01-15T17:00",
              "steps": [{"unit": "rack-1", "joints": "0123456789ab", "signedBy": "A", "signedAt": "2026-01-15T10:00",
                         "note": "n", "checks": [{"check": "rack-1/x", "done": true, "value": 1850.5},
                                                 {"check": "rack-1/door", "done": false}]}]
            }
            """;

    private static final String WEIGHING = """
            {
              "format": "shelterwright-weighing", "version": 1, "layout": "post", "date": "2026-01-15",
              "supports": [{"name": "rear", "x": 0, "y": 0, "levelKg": 900, "tiltedKg": 950, "uncertaintyKg": 1},
                           {"name": "front", "x": 4200, "y": 0, "levelKg": 800, "tiltedKg": 750, "uncertaintyKg": 1}],
              "pivotHeight": 100, "tilt": {"frontUpDegrees": 8, "uncertaintyDegrees": 0.1},
              "others": [{"name": "driver", "massKg": 75, "uncertaintyKg": 1, "x": 1000, "y": 0, "z": 500}]
            }
            """;

    private static void weigh(InputFile file) {
        assertThat(Scales.of(Weighing.FORMAT.open(file).value()).kg()).isPositive();
    }

    private static <T> Arguments reader(JsonFormat<T> format, String text, Consumer<InputFile> more) {
        Consumer<InputFile> reader = file -> {
            T value = format.open(file).value();
            assertThat(format.read(format.write(value), "written")).isEqualTo(value);
            more.accept(file);
        };
        return Arguments.of(format.name(), text, reader);
    }

    private static <T> Arguments entry(JsonFormat<T> format, T value) {
        return reader(
                format,
                new String(format.write(value), StandardCharsets.UTF_8),
                file -> CatalogEntries.read(List.of(file)).catalog());
    }

    static Stream<Arguments> readers() {
        return Stream.of(
                entry(CatalogFormats.ITEM, SmallPost.RACK),
                entry(CatalogFormats.BODY, SmallPost.BODY),
                entry(CatalogFormats.CARRIER, SmallPost.TRUCK),
                reader(CatalogFormats.FASTENERS, FASTENERS, file -> {}),
                reader(RuleSets.FORMAT, RULE_SET, file -> {}),
                reader(AsBuiltRecord.FORMAT, RECORD, file -> {}),
                reader(Weighing.FORMAT, WEIGHING, ReadersHoldTest::weigh),
                reader(
                        LayoutFormats.BRIEF,
                        new String(LayoutFormats.BRIEF.write(SmallPost.brief()), StandardCharsets.UTF_8),
                        ReadersHoldTest::checkBrief),
                reader(
                        LayoutFormats.LAYOUT,
                        new String(LayoutFiles.bytes(SmallPost.layout()), StandardCharsets.UTF_8),
                        ReadersHoldTest::useLayout));
    }

    private static void checkBrief(InputFile file) {
        Sourced<Brief> brief = LayoutFormats.BRIEF.open(file);
        BriefCheck.of(brief.value(), brief.places(), SmallPost.CATALOG, List.of())
                .requireUsable();
    }

    private static void useLayout(InputFile file) {
        Layout layout = LayoutFiles.read(file).layout();
        CatalogChanges.of(layout, SmallPost.CATALOG);
        if (layout.brief().ruleSets().isEmpty()) {
            Scene scene = Scene.of(layout, Rules.of(layout.brief(), List.of()));
            assertThat(scene.units()).hasSameSizeAs(layout.placements().keySet());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("readers")
    void givesAValueOrProblems(String name, String text, Consumer<InputFile> reader) {
        reader.accept(new InputFile("sound", text.getBytes(StandardCharsets.UTF_8)));
        int values = 0;
        for (int seed = 0; seed < COUNT; seed++) {
            byte[] bytes = Mutation.of(text, new Random(seed));
            long start = System.nanoTime();
            try {
                reader.accept(new InputFile("spoiled.json", bytes));
                values++;
            } catch (InputException e) {
                assertThat(e.problems()).as("seed %d", seed).isNotEmpty().allSatisfy(ReadersHoldTest::isSentence);
            } catch (RuntimeException | Error e) {
                throw new AssertionError("seed " + seed + " of " + name, e);
            }
            assertThat(Duration.ofNanos(System.nanoTime() - start))
                    .as("seed %d", seed)
                    .isLessThan(LONGEST);
        }
        assertThat(values).as("some spoiled files are still sound").isGreaterThan(COUNT / 50);
    }

    private static void isSentence(Problem problem) {
        assertThat(problem.where()).isNotBlank();
        assertThat(problem.sentence()).matches("(?s)[A-Z\"].*[.?]").hasSizeLessThan(1_500);
        assertThat(problem.sentence()).doesNotContain("Exception", "java.", "null pointer");
    }

    @Test
    void refusesLargeFilesOfManyKindsInTime() {
        int most = InputFile.LARGEST - 100;
        String head = "{\"format\": \"shelterwright-layout\", \"version\": 1, \"a\": ";
        for (String filler : List.of("[", "[[],", "{\"a\":", "0,", "\"", "[0,0,0],", "{},", "\\", " ")) {
            String text = head + (filler.contains(",") ? "[" : "") + filler.repeat((most - 100) / filler.length());
            long start = System.nanoTime();
            try {
                LayoutFiles.read(new InputFile("large.json", text.getBytes(StandardCharsets.UTF_8)));
                throw new AssertionError("read " + filler);
            } catch (InputException e) {
                assertThat(e.problems()).as(filler).allSatisfy(ReadersHoldTest::isSentence);
            }
            assertThat(Duration.ofNanos(System.nanoTime() - start)).as(filler).isLessThan(LONGEST);
        }
    }

    @Test
    void refusesVeryManyWrongReferencesInTime() {
        StringBuilder units = new StringBuilder();
        for (int i = 0; i < 100_000; i++) {
            units.append(i == 0 ? "" : ",")
                    .append("{\"id\":\"u")
                    .append(i)
                    .append("\",\"name\":\"\",\"item\":\"i")
                    .append(i)
                    .append("\",\"group\":\"\"}");
        }
        String text =
                "{\"format\":\"shelterwright-brief\",\"version\":1,\"id\":\"a\",\"name\":\"\",\"body\":\"box\",\"crew\":1,"
                        + "\"units\":[" + units + "]}";

        Sourced<Brief> brief =
                LayoutFormats.BRIEF.open(new InputFile("many.json", text.getBytes(StandardCharsets.UTF_8)));

        assertThat(BriefCheck.of(brief.value(), brief.places(), SmallPost.CATALOG, List.of())
                        .problems())
                .extracting(Problem::sentence)
                .containsExactly("The brief asks for 100000 units; at most 5000 are taken. Split it.");
    }
}
