package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.cli.terminal.Traits;
import org.shelterwright.app.cli.workshop.Interrupts;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitProgress;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.WhyNot;
import tools.jackson.databind.JsonNode;

class FitVerbTest {

    @TempDir
    Path folder;

    @Test
    void findsPlacesAndWritesLayoutsAndDocuments() {
        Path out = folder.resolve("results/small-post");

        Ran ran = Ran.of("fit", Briefs.smallPost(folder), "--moves", 50_000, "--out", out, "--alternatives", 2);

        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(ran.err()).isEmpty();
        Layout layout = LayoutFiles.read(out.resolve("layout.json")).layout();
        assertThat(layout.placements()).containsOnlyKeys("rack-1", "desk", "battery-1");
        assertThat(layout.provenance()).satisfies(provenance -> {
            assertThat(provenance.seed()).isEqualTo(1);
            assertThat(provenance.moves()).isEqualTo(50_000);
        });
        assertThat(ran.outLines().get(0)).startsWith("Small Post: ").contains("not assessed of");
        assertThat(ran.out()).contains("written to " + out + ":", "  layout.json", "  layout-2.json");
        assertThat(out)
                .isDirectoryNotContaining(file -> file.getFileName().toString().startsWith("."));
    }

    @Test
    void documentsThatCannotBeWrittenLeaveTheLayoutSaved() throws IOException {
        Path out = folder.resolve("out");
        Files.createDirectories(out.resolve("02-ledger.csv/in the way"));

        Ran ran = Ran.of("fit", Briefs.smallPost(folder), "--moves", 5_000, "--out", out);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(2);
        assertThat(ran.err()).startsWith("The layouts were saved in " + out + ", the documents were not.");
        assertThat(LayoutFiles.read(out.resolve("layout.json")).layout().placements())
                .hasSize(3);
    }

    @Test
    void sameSeedAndMovesGiveTheSameBytesOnAnyNumberOfThreads() throws IOException {
        Path brief = Briefs.smallPost(folder);
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");

        Ran first = Ran.of("fit", brief, "--moves", 30_000, "--seed", 7, "--threads", 1, "--out", one, "--json");
        Ran second = Ran.of("fit", brief, "--moves", 30_000, "--seed", 7, "--threads", 2, "--out", two, "--json");

        assertThat(Files.readAllBytes(two.resolve("layout.json")))
                .isEqualTo(Files.readAllBytes(one.resolve("layout.json")));
        assertThat(second.out()).isEqualTo(first.out().replace(one.toString(), two.toString()));
    }

    @Test
    void withoutAFolderItWritesIntoOneNamedLikeTheBrief() throws IOException {
        Path brief = Briefs.write(folder, "b.json", Briefs.smallPost().replace("\"small-post\"", "\"named-post\""));
        Path expected = Path.of("named-post").toAbsolutePath();
        try {
            Ran ran = Ran.with(nothingMoves(), "fit", brief);

            assertThat(ran.out()).contains("1 file written to named-post:");
            assertThat(expected.resolve("layout.json")).exists();
        } finally {
            Files.deleteIfExists(expected.resolve("layout.json"));
            Files.deleteIfExists(expected);
        }
    }

    @Test
    void pinnedUnitsOfALayoutStayWhereTheyAre() {
        Path brief = Briefs.smallPost(folder);
        Path out = folder.resolve("out");
        Ran.of("fit", brief, "--moves", 20_000, "--out", out);
        Path file = out.resolve("layout.json");
        Layout found = LayoutFiles.read(file).layout();
        Placement rack = found.placements().get("rack-1").withPin(Pin.ALL);
        LayoutFiles.write(found.with(rack), file, Fingerprint.of(file));

        Ran ran = Ran.of("fit", file, "--moves", 20_000, "--seed", 99, "--out", out);

        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        Layout again = LayoutFiles.read(file).layout();
        assertThat(again.placements()).containsEntry("rack-1", rack);
        assertThat(again.provenance().seed()).isEqualTo(99);
        assertThat(out.resolve("layout.previous.json"))
                .as("what was there is kept")
                .exists();
    }

    @Test
    void layoutThatChangedDuringTheSearchIsNotWrittenOverAndNothingIsLost() throws IOException {
        Path out = folder.resolve("out");
        Path file = out.resolve("layout.json");
        Files.createDirectories(out);
        Files.writeString(file, "mine");
        Fitter slow = (request, observer, stop) -> {
            Briefs.write(out, "layout.json", "somebody else's");
            return result(request, null);
        };

        Ran ran = Ran.with(slow, "fit", Briefs.smallPost(folder), "--out", out);

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err().strip())
                .isEqualTo(file + ": The file was changed by another during the search and is left as it is;"
                        + " the layout that was found is in layout.found.json.");
        assertThat(file).hasContent("somebody else's");
        assertThat(LayoutFiles.read(out.resolve("layout.found.json")).layout().placements())
                .hasSize(1);
    }

    @Test
    void longReasonsGoOnBelowTheirSign() {
        WhyNot whyNot = new WhyNot(false, List.of("word ".repeat(25).strip()), List.of("one by 1 mm", "two by 2 mm"));
        Fitter fitter = (request, observer, stop) -> result(request, whyNot);

        Ran ran = Ran.with(fitter, "fit", Briefs.smallPost(folder), "--out", folder.resolve("out"));

        assertThat(ran.out())
                .contains(
                        "  - " + "word ".repeat(19).strip() + "\n    "
                                + "word ".repeat(6).strip() + "\n",
                        "A layout was found that holds if all of these limits are relaxed:",
                        "  - one by 1 mm",
                        "  - two by 2 mm");
    }

    @Test
    void saysWhyNothingHolds() {
        WhyNot whyNot = new WhyNot(
                true,
                List.of("The units need 13.1 m² of floor; there are 6.6 m²."),
                List.of("access.walkway by 80 mm"));
        Fitter fitter = (request, observer, stop) -> result(request, whyNot);
        Path brief = Briefs.smallPost(folder);

        Ran ran = Ran.with(fitter, "fit", brief, "--out", folder.resolve("out"));
        Ran asJson = Ran.with(fitter, "fit", brief, "--out", folder.resolve("out"), "--json");

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out())
                .contains(
                        "No layout can hold every limit:",
                        "  - The units need 13.1 m² of floor; there are 6.6 m².",
                        "A layout was found that holds if this limit is relaxed:",
                        "  - access.walkway by 80 mm");
        assertThat(asJson.json().at("/whyNot/proven").asBoolean()).isTrue();
        assertThat(asJson.json().at("/whyNot/reasons/0").asString()).startsWith("The units need");
    }

    @Test
    void saysThatNothingCouldBePlacedAtAll() {
        Fitter fitter = (request, observer, stop) -> new FitResult(
                List.of(), new WhyNot(false, List.of("No place for Rack 1."), List.of()), 10, Duration.ZERO);
        Path out = folder.resolve("out");

        Ran ran = Ran.with(fitter, "fit", Briefs.smallPost(folder), "--out", out);

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out())
                .contains(
                        "Small Post: no place was found for anything.",
                        "No layout was found that holds every limit:",
                        "  - No place for Rack 1.");
        assertThat(out).doesNotExist();
    }

    @Test
    void jsonHasTheDocumentedShape() {
        Ran ran = Ran.of("fit", Briefs.smallPost(folder), "--moves", 20_000, "--out", folder.resolve("out"), "--json");

        JsonNode root = ran.json();
        assertThat(keys(root))
                .containsExactly(
                        "format", "version", "program", "data", "status", "id", "name", "seed", "budget", "moves",
                        "stopped", "options", "whyNot", "folder", "files");
        assertThat(root.get("format").asString()).isEqualTo("shelterwright-result-fit");
        assertThat(root.get("status").asInt()).isEqualTo(ran.status());
        JsonNode best = root.at("/options/0");
        assertThat(keys(best)).containsExactly("file", "score", "counts", "subjects", "rows");
        assertThat(best.at("/score/hard").asLong()).isZero();
        assertThat(best.get("rows")).isNotEmpty();
    }

    @Test
    void endRequestStopsTheSearchAndKeepsTheBest() {
        List<Runnable> asked = new ArrayList<>();
        Interrupts interrupts = onRequest -> {
            asked.add(onRequest);
            return () -> asked.remove(onRequest);
        };
        Fitter endless = (request, observer, stop) -> {
            asked.get(0).run();
            assertThat(stop.stopped()).isTrue();
            return result(request, null);
        };
        Path out = folder.resolve("out");

        Ran ran = Ran.with(
                endless, interrupts, Traits.PIPED, "fit", Briefs.smallPost(folder), "--moves", 1000, "--out", out);

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err().lines())
                .containsExactly(
                        "Stopping: the best so far is kept and written.", "The search was stopped after 500 moves.");
        assertThat(asked).as("the watch has ended").isEmpty();
        Layout kept = LayoutFiles.read(out.resolve("layout.json")).layout();
        assertThat(kept.provenance().moves()).as("cannot be repeated by moves").isNull();
    }

    @Test
    void progressIsShownOnlyWhereSomebodyWatches() {
        Fitter telling = (request, observer, stop) -> {
            observer.progress(new FitProgress(1_200_000, Duration.ofMillis(400), new FitScore(0, 2, 345)));
            observer.progress(new FitProgress(1_300_000, Duration.ofMillis(450), new FitScore(0, 1, 345)));
            return result(request, null);
        };
        Path brief = Briefs.smallPost(folder);
        Object[] arguments = {"fit", brief, "--out", folder.resolve("out")};

        Ran piped = Ran.with(telling, arguments);
        Ran watched = Ran.with(telling, Interrupts.NONE, new Traits(false, false, true), arguments);

        assertThat(piped.err()).isEmpty();
        assertThat(watched.err())
                .contains("Searching 0.4 s, 1.2 M moves; best: unsafe 0, out of reach 2, wishes 345")
                .doesNotContain("1.3 M");
        assertThat(watched.out()).isEqualTo(piped.out());
    }

    static Fitter nothingMoves() {
        return (request, observer, stop) -> result(request, null);
    }

    private static FitResult result(FitRequest request, WhyNot whyNot) {
        Pose pose = new Pose(new Point(1_000_000, 1_000_000, 0), QuarterTurn.values()[0]);
        Layout layout = request.start().with(Placement.of("rack-1", Place.onFloor(pose)));
        FitOption option = new FitOption(layout, Checker.standard().check(layout), new FitScore(0, 0, 12));
        return new FitResult(List.of(option), whyNot, 500, Duration.ofMillis(20));
    }

    static List<String> keys(JsonNode node) {
        return List.copyOf(node.propertyNames());
    }

    static List<JsonNode> elements(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }
}
