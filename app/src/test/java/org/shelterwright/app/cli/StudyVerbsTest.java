package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.cli.terminal.Traits;
import org.shelterwright.app.cli.workshop.Interrupts;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.Fitter;
import tools.jackson.databind.JsonNode;

class StudyVerbsTest {
    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "post-study", "name": "Post study",
             "brief": "small-post.json",
             "axes": [
               {"id": "body", "settings": [{"id": "short"}, {"id": "long", "body": "box-6000"}]},
               {"id": "battery", "settings": [
                 {"id": "as-listed"},
                 {"id": "heavy", "items": [{"item": "battery-box-24v", "deeper": 40, "heavierKg": 12}]},
                 {"id": "tall", "items": [{"item": "battery-box-24v", "taller": "3 m"}]}]}],
             "seeds": {"first": 1, "count": 2}, "leaveOut": [{"when": {"body": ["long"], "battery": ["tall"]}}],
             "moves": 1000}
            """;

    @TempDir
    private static Path folder;

    private static Path done;
    private static Ran run;

    @BeforeAll
    static void runTheStudyOnce() {
        Briefs.write(
                folder,
                "small-post.json",
                Briefs.smallPost().replace("\"crew\": 2", "\"crew\": 2, \"ruleSets\": [\"shelter-common\"]"));
        Briefs.write(folder, "study.json", STUDY);
        done = folder.resolve("done");
        run = run(study(), "--out", done, "--threads", 2);
    }

    private static Path study() {
        return folder.resolve("study.json");
    }

    private static Ran run(Object... arguments) {
        Object[] all = new Object[arguments.length + 2];
        all[0] = "study";
        all[1] = "run";
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        return Ran.with(inARow(), all);
    }

    /** Puts the units of the small post side by side, the racks a step farther with each seed. */
    private static Fitter inARow() {
        Checker checker = Checker.standard();
        return (request, observer, stop) -> {
            Map<String, Placement> placements = new LinkedHashMap<>();
            int x = (int) request.seed() * 50;
            for (var unit : request.start().brief().units()) {
                placements.put(unit.id(), Placement.of(unit.id(), Place.onFloor(Pose.at(Point.ofMm(x, 0, 0)))));
                x += request.start().item(unit).size().x() / 1000;
            }
            Layout layout = request.start().withPlacements(placements);
            return new FitResult(
                    List.of(new FitOption(layout, checker.check(layout), new FitScore(0, 0, 7))),
                    null,
                    1000,
                    Duration.ZERO);
        };
    }

    @Test
    void tellsHowManyRunsThereAreBeforeItBegins() {
        assertThat(run.err().lines())
                .containsExactly(
                        "Post study: 10 runs of 1000 moves.", "  2 (body) x 3 (battery) x 2 seeds, less 2 left out");
        Ran count = Ran.of("study", "run", study(), "--count");
        assertThat(count.outLines()).isEqualTo(run.err().lines().toList());
        assertThat(count.status()).isZero();
        JsonNode json = Ran.of("study", "run", study(), "--count", "--json").json();
        assertThat(json.get("runs").asInt()).isEqualTo(10);
        assertThat(json.get("axes").get("battery").size()).isEqualTo(3);
    }

    @Test
    void runsAllAndWritesResultsAndTables() throws IOException {
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.outLines().get(0)).startsWith("Post study: 10 of 10 runs done, 10 of them now, in ");
        assertThat(run.outLines().get(1)).endsWith(", 2 cannot be laid out at all.");
        assertThat(run.out())
                .contains("4 files written to " + done, "study.json", "results.jsonl", "runs.csv", "runs.xlsx");
        List<String> csv = Files.readAllLines(done.resolve("runs.csv"));
        assertThat(csv).hasSize(11);
        assertThat(csv.get(0))
                .startsWith("run,body,battery,seed,verdict,broken,close,not assessed,met,governing limit,");
        assertThat(csv.get(1)).startsWith("1,short,as-listed,1,");
        assertThat(csv.get(5))
                .startsWith("5,short,tall,1,refused,,")
                .contains("\"The unit \"\"battery-1\"\" cannot be placed: ");
    }

    @Test
    void goesOnWhereItEndedAndRepeatsNothing() throws IOException {
        byte[] before = Files.readAllBytes(done.resolve("results.jsonl"));

        Ran again = run(study(), "--out", done);

        assertThat(again.outLines().get(0)).startsWith("Post study: 10 of 10 runs done, 0 of them now, in ");
        assertThat(Files.readAllBytes(done.resolve("results.jsonl"))).isEqualTo(before);
    }

    @Test
    void refusesTheFolderOfAnotherStudy() {
        Path other = Briefs.write(folder, "other.json", STUDY.replace("\"moves\": 1000", "\"moves\": 2000"));

        Ran ran = run(other, "--out", done);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .endsWith("study.json: The study has changed since it was begun here, and results of both would not fit"
                        + " together. Name another folder." + System.lineSeparator());
    }

    @Test
    void aStudyThatIsStoppedKeepsWhatIsDone() {
        Path out = folder.resolve("stopped");
        Interrupts atOnce = onRequest -> {
            onRequest.run();
            return () -> {};
        };

        Ran ran = Ran.with(inARow(), atOnce, Traits.PIPED, "study", "run", study(), "--out", out);

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains("Stopping: what is done is kept; start again to go on.");
        assertThat(ran.outLines().get(0))
                .startsWith("Post study: 0 of 10 runs done, 0 of them now, in ")
                .endsWith(" Start again to do the 10 left.");
        assertThat(run(study(), "--out", out).outLines().get(0))
                .startsWith("Post study: 10 of 10 runs done, 10 of them now");
    }

    @Test
    void preparesAFolderForACluster() {
        Path out = folder.resolve("prepared");

        Ran ran = run(study(), "--out", out, "--prepare");

        assertThat(ran.status()).isZero();
        assertThat(ran.outLines()).containsExactly("The study is ready in " + out + ".");
        assertThat(out.resolve("study.json")).exists();
        assertThat(out.resolve("results.jsonl")).doesNotExist();
    }

    @Test
    void showsChosenRunsInOrder() {
        Ran ran = Ran.of(
                "study",
                "show",
                done,
                "--where",
                "body=long",
                "--sort",
                "mass",
                "--descending",
                "--columns",
                "run,battery,seed,mass");

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.outLines().get(0)).isEqualTo("run  battery    seed  mass (kg)");
        assertThat(ran.outLines().subList(1, 5))
                .extracting(line -> line.substring(0, 3).strip())
                .containsExactly("9", "10", "7", "8");
        assertThat(ran.outLines()).endsWith("4 of 10 runs shown.");
        assertThat(Ran.of("study", "show", done, "--verdict", "refused").outLines())
                .endsWith("2 of 10 runs shown.");
    }

    @Test
    void showsTheFrontOfTwoMeasuresAndDrawsIt() {
        Path out = folder.resolve("front");

        Ran ran = Ran.of("study", "show", done, "--front", "mass,free", "--out", out, "--date", "2026-03-01", "--json");

        JsonNode json = ran.json();
        assertThat(json.get("results").valueStream().map(one -> one.get("run").asInt()))
                .as("the lightest with the least room, and the roomier")
                .containsExactly(1, 2, 7, 8);
        assertThat(json.get("files").valueStream().map(JsonNode::asString))
                .containsExactly("runs.csv", "runs.xlsx", "trade-off-mass-free.svg", "trade-off-mass-free.pdf");
        assertThat(out.resolve("trade-off-mass-free.svg"))
                .content()
                .contains("Mass of the filled body (kg), less is better");
    }

    @Test
    void comparesChosenRuns() {
        Path out = folder.resolve("compared");

        Ran ran = Ran.of("study", "compare", done, 1, 9, "--out", out, "--date", "2026-03-01");

        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(ran.outLines().get(0)).isEqualTo("2 files written to " + out + ":");
        assertThat(out.resolve("comparison.csv")).content().startsWith("limit,run 1 verdict,run 1 demand,");
        assertThat(Ran.of("study", "compare", done, 1, "--out", out).err())
                .isEqualTo("RUN: Name two to 4 different runs, not 1." + System.lineSeparator());
        assertThat(Ran.of("study", "compare", done, 1, 5, "--out", out).err())
                .contains("Run 5 has no layout: The unit \"battery-1\" cannot be placed: ");
    }

    @Test
    void opensARunAsALayoutThatIsCheckedLikeAnyOther() {
        Path out = folder.resolve("chosen.json");

        Ran ran = Ran.of("study", "open", done, 9, "--out", out);

        assertThat(ran.status()).isEqualTo(1);
        Layout layout = LayoutFiles.read(InputFile.read(out)).layout();
        assertThat(layout.body().id()).isEqualTo("box-6000");
        assertThat(layout.provenance().seed()).isEqualTo(1);
        assertThat(layout.parts().item("battery-box-24v").size().x()).isEqualTo(740_000);
        assertThat(Ran.of("check", out).outLines().get(0).replace("Small Post: ", ""))
                .isEqualTo(ran.outLines().get(0).replace("Run 9: ", ""));
        assertThat(Ran.of("study", "open", done, 9, "--out", out).err())
                .contains("There is a file of this name already.");
    }

    @Test
    void badInputIsToldInASentence() {
        assertRefused(
                "--where: The setting \"longer\" is not known. Did you mean \"long\"?",
                "show",
                done,
                "--where",
                "body=longer");
        assertRefused(
                "--where: \"body\" must name an axis and a setting: body=box-4200.", "show", done, "--where", "body");
        assertRefused(
                "--where: The axis \"bady\" is not known. Did you mean \"body\"?", "show", done, "--where", "bady=x");
        assertRefused("--sort: The column \"mas\" is not known. Did you mean \"mass\"?", "show", done, "--sort", "mas");
        assertRefused(
                "--verdict: The verdict \"mett\" is not known. Did you mean \"met\"?",
                "show",
                done,
                "--verdict",
                "mett");
        assertRefused("--front: Name two measures, such as mass,free, not 1.", "show", done, "--front", "mass");
        assertRefused(
                "--front: The measure \"frree\" is not known. Did you mean \"free\"?",
                "show",
                done,
                "--front",
                "mass,frree");
        assertRefused(
                done
                        + ": There is no front by \"centre-x\": neither more nor less of it is better. Take another measure.",
                "show",
                done,
                "--front",
                "mass,centre-x");
        assertRefused("--threads: This is 0, but must be from 1 to 1024.", "run", study(), "--threads", 0);
        assertRefused(
                "sample:rivr-post: There is no such study. Did you mean \"river-post\"?", "run", "sample:rivr-post");
        Path empty = folder.resolve("empty");
        assertThat(empty.toFile().mkdir()).isTrue();
        assertRefused(empty + ": No study was run into this folder: it holds no file study.json.", "show", empty);
        assertRefused(
                done + ": There is no run 11: the study has the runs 1 to 10.", "open", done, 11, "--out", "x.json");
    }

    private static void assertRefused(String sentence, Object... arguments) {
        Object[] all = new Object[arguments.length + 1];
        all[0] = "study";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        Ran ran = Ran.of(all);
        assertThat(ran.err()).isEqualTo(sentence + System.lineSeparator());
        assertThat(ran.status()).isEqualTo(2);
    }
}
