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
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord;
import org.shelterwright.layouts.asbuilt.Scales;
import org.shelterwright.layouts.asbuilt.Weighing;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.CatalogChanges;
import org.shelterwright.layouts.file.FilledPost;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.StudyFormats;
import org.shelterwright.layouts.study.StudyPlan;
import org.shelterwright.layouts.study.results.ResultFormats;
import org.shelterwright.layouts.study.results.Runs;

/** Whatever a file holds, a reader gives a value or a list of problems, in bounded time and memory. */
class ReadersHoldTest {
    private static final int COUNT = 1_000;
    private static final Duration LONGEST = Duration.ofSeconds(30);

    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final Transit TRANSIT = CATALOG.transit();
    private static final JourneyChecker CHECKER = JourneyChecker.standard();
    private static final String JOURNEY = """
            {
              "format": "shelterwright-journey", "version": 1,
              "journey": {
                "id": "j", "name": "Crates",
                "pieces": [
                  {"id": "a", "name": "A", "crate": {"size": [1200, 1000, 900], "massKg": 500, "centre": [600, 500, 400],
                   "underside": "sawn-timber", "stackingKg": 800,
                   "eyes": [{"name": "ring", "use": "both", "at": [0, 0, 900], "ratingN": 5000}]}},
                  {"id": "b", "name": "B", "crate": {"size": [1200, 1000, 900], "massKg": 400, "centre": [600, 500, 400],
                   "underside": "sawn-timber"}, "apart": []}
                ],
                "loads": [
                  {"id": "lorry", "name": "Lorry", "car": "lorry-platform",
                   "stands": [
                     {"what": "a", "pose": {"at": [2000, 500, 0], "yaw": 0}},
                     {"what": "b", "pose": {"at": [2000, 500, 900], "yaw": 0}}],
                   "lashings": [
                     {"key": "A", "kind": "strap-50", "what": ["a", "b"], "anchor": "right 5", "anchor2": "left 5"},
                     {"key": "B", "kind": "chain-8", "what": ["a"], "eye": "ring", "anchor": "right 1"}],
                   "blocks": [{"what": "a", "way": "beams", "toward": ["front", "rear"], "count": 2, "eachN": 8000}]}
                ],
                "legs": [
                  {"id": "road", "name": "Road", "mode": "road", "from": "here", "to": "there", "distanceKm": 12,
                   "ruleSets": ["road-eu", "lashing"], "outline": "road-eu", "curveM": 20,
                   "ramp": {"name": "ramp", "degrees": 8, "axleKg": 4000},
                   "restrictions": [{"name": "bridge", "asks": ["gross", "height"], "grossKg": 16000}],
                   "loads": ["lorry"], "lifts": ["a"]}
                ],
                "limits": {"transport.tie-down-factor": 1.2}
              }
            }
            """;

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

    private static final SealedStudy SMALL_STUDY = new SealedStudy(
            "1.0",
            StudyFormats.STUDY.read("""
                    {"format": "shelterwright-study", "version": 1, "id": "small", "name": "Small", "brief": "brief.json",
                     "axes": [
                       {"id": "racks", "settings": [{"id": "one", "quantities": [{"unit": "rack-2", "count": 0}]}]},
                       {"id": "table", "settings": [{"id": "wide", "items": [{"item": "table", "wider": "1 in"}]}]}],
                     "seeds": {"first": 3, "count": 2}, "moves": 1000, "keep": "unbroken"}
                    """.getBytes(StandardCharsets.UTF_8), "study.json"),
            SmallPost.brief(),
            List.of(SmallPost.BODY),
            List.of(SmallPost.TRUCK, SmallPost.TRAILER),
            List.copyOf(SmallPost.CATALOG.items()),
            List.copyOf(SmallPost.CATALOG.cables()),
            List.copyOf(SmallPost.CATALOG.pieces()));

    private static final String RESULTS_HEAD = """
            {"format": "shelterwright-study-results", "version": 1, "study": "small", "sha256": "00ff", "runs": 2}
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
                entry(
                        CatalogFormats.PIECE,
                        FilledPost.layout().contents().kinds().get("radio")),
                entry(
                        CatalogFormats.PIECE,
                        FilledPost.layout().contents().kinds().get("lamp")),
                entry(CatalogFormats.ITEM, FilledPost.RACK),
                reader(
                        LayoutFormats.LAYOUT,
                        new String(LayoutFiles.bytes(FilledPost.layout()), StandardCharsets.UTF_8),
                        ReadersHoldTest::useLayout),
                entry(
                        CatalogFormats.TRANSIT_CAR,
                        TRANSIT.car("covered-wagon-2-axle").orElseThrow()),
                entry(CatalogFormats.OUTLINE, TRANSIT.outlines().get(0)),
                entry(CatalogFormats.LASHING, TRANSIT.lashings().get(0)),
                entry(CatalogFormats.LINE_CATEGORIES, TRANSIT.lineCategories().get(0)),
                entry(CatalogFormats.FRICTION, TRANSIT.frictions().get(0)),
                reader(JourneyFiles.FORMAT, JOURNEY, ReadersHoldTest::useJourney),
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
                        ReadersHoldTest::useLayout),
                reader(
                        StudyFormats.STUDY,
                        new String(Samples.study("river-post").bytes(), StandardCharsets.UTF_8),
                        ReadersHoldTest::sealStudy),
                reader(
                        StudyFormats.SEALED,
                        new String(StudyFormats.SEALED.write(SMALL_STUDY), StandardCharsets.UTF_8),
                        ReadersHoldTest::startStudy),
                reader(ResultFormats.HEAD, RESULTS_HEAD, file -> {}),
                reader(ResultFormats.RUN, ResultFormats.RUN.canonical(Runs.of(SMALL_STUDY, 1, 0.9, 4000)), file -> {}));
    }

    private static void sealStudy(InputFile file) {
        StudyPlan plan = new StudyFiles(CATALOG, RuleSets.builtIn(), "1.0")
                .open(file, null)
                .study()
                .plan();
        assertThat(plan.run(plan.count()).number()).isEqualTo(plan.count());
    }

    private static void startStudy(InputFile file) {
        SealedStudy study = StudyFiles.readSealed(file);
        try {
            study.start(study.plan().run(1));
        } catch (IllegalArgumentException e) {
            // The run is then refused, with this as its sentence.
            isSentence(new Problem("run", e.getMessage()));
        }
    }

    /** A journey of crates on a lorry: layouts are read by a reader of their own. */
    private static void useJourney(InputFile file) {
        OpenedJourney opened = JourneyFiles.read(
                file,
                CATALOG,
                from -> {
                    throw new InputException("a layout", "There is no such file.");
                },
                CHECKER.ruleSets());
        assertThat(CHECKER.check(CHECKER.scene(opened.journey(), opened.parts()))
                        .legs())
                .hasSameSizeAs(opened.journey().legs());
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
