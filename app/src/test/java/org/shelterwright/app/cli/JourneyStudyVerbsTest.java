package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A study over the cars of a journey, on the command line. */
class JourneyStudyVerbsTest {
    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "cars", "name": "Which wagons", "journey": "sample:forty-crates",
             "axes": [{"id": "wagons", "settings": [
               {"id": "two-long", "cars": [{"load": "long", "count": 2}, {"load": "short", "count": 0}]},
               {"id": "one-short", "cars": [{"load": "long", "count": 0}]}]}],
             "moves": 1000}
            """;

    @TempDir
    private static Path folder;

    private static Path done;
    private static Ran run;

    @BeforeAll
    static void runTheStudyOnce() {
        Path study = Briefs.write(folder, "cars.json", STUDY);
        done = folder.resolve("done");
        run = Ran.of("study", "run", study, "--out", done);
    }

    @Test
    void runsAndTellsTheCarsOfEachMix() {
        assertThat(run.status()).as(run.err()).isIn(0, 1);
        assertThat(run.outLines().get(0)).startsWith("Which wagons: 2 of 2 runs done, 2 of them now");

        JsonNode json = Ran.of("study", "show", done, "--json").json();

        JsonNode first = json.get("results").get(0).get("measures");
        assertThat(first.get("cars").asDouble()).isBetween(1.0, 2.0);
        assertThat(first.get("cars-length").asDouble()).isGreaterThan(20);
        assertThat(first.get("left").asDouble()).isZero();
        assertThat(first.get("free").isNull()).isTrue();
    }

    @Test
    void opensARunAsAJourneyThatIsCheckedLikeAnyOther() {
        Path out = folder.resolve("chosen.json");

        Ran ran = Ran.of("study", "open", done, 1, "--out", out);

        assertThat(ran.status()).as(ran.err()).isIn(0, 1);
        assertThat(ran.outLines()).endsWith("The journey is in " + out + ".");
        Ran loaded = Ran.of("load", out, "--json");
        assertThat(loaded.status()).as(loaded.err()).isIn(0, 1);
    }

    @Test
    void runsOfAJourneyAreNotComparedAsLayouts() {
        Ran ran = Ran.of("study", "compare", done, 1, 2, "--out", folder.resolve("compared"));

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .isEqualTo(done
                        + ": Runs of a journey have no layouts to compare. Compare them in the table: shelterwright"
                        + " study show " + done + "." + System.lineSeparator());
    }
}
