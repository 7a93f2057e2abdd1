package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.file.LayoutFiles;
import tools.jackson.databind.JsonNode;

class MarginVerbsTest {
    @TempDir
    private static Path folder;

    @Test
    void saysWhatStillFits() {
        Ran ran = Ran.of("margin", "room", "sample:river-post");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.outLines().get(0)).isEqualTo("River Post: what still fits");
        assertThat(ran.out())
                .contains(
                        "Largest free cuboid, clear zones kept: ",
                        "Largest on the floor that breaks no limit of place: ")
                .containsPattern("kg +Axles +Load of rear axle of Two-axle truck")
                .containsPattern("U +Racks +Telemetry rack 1");
        JsonNode json = Ran.of("margin", "room", "sample:river-post", "--json").json();
        assertThat(json.get("anywhere").get("size").size()).isEqualTo(3);
        assertThat(json.get("reserves").size()).isGreaterThan(10);
    }

    @Test
    void saysHowMuchAUnitMayGrow() {
        Ran ran = Ran.of("margin", "growth", "sample:river-post", "--unit", "first-aid", "--json");

        JsonNode unit = ran.json().get("units").get(0);
        assertThat(unit.get("unit").asString()).isEqualTo("first-aid");
        assertThat(unit.get("heavier").get("most").asInt()).isPositive();
        assertThat(unit.get("heavier").get("breaks").asString()).isNotBlank();
        assertThat(unit.get("deeper").get("unit").asString()).isEqualTo("mm");
    }

    @Test
    void saysHowLikelyLimitsAreExceeded() {
        Ran ran = Ran.of("margin", "chance", "sample:river-post", "--draws", 50);

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.outLines().get(0))
                .isEqualTo("River Post: chance that a limit is exceeded, 50 draws of masses and centres");
        assertThat(ran.out()).contains("Gross mass of the body", "with 95 % confidence the chance is below 7.1 %.");
    }

    @Test
    void badInputIsToldInASentence() {
        assertRefused(
                "--limit: The limit \"mass.center-along\" is not known. Did you mean \"mass.centre-along\"?",
                "gain",
                "sample:river-post",
                "--limit",
                "mass.center-along");
        assertRefused(
                "--unit: The unit \"rack-3\" is not placed there. Did you mean \"rack-1\"?",
                "growth",
                "sample:river-post",
                "--unit",
                "rack-3");
        assertRefused(
                "--draws: This is 0, but must be from 1 to 1000000.", "chance", "sample:river-post", "--draws", 0);
        assertRefused(
                "--count: This is 0, but must be from 1 to 50.",
                "gain",
                "sample:river-post",
                "--limit",
                "mass.centre-along",
                "--count",
                0);
        assertRefused(
                "sample:too-much: Nothing is placed in it, so there is nothing to look at. Fit it first: shelterwright fit"
                        + " sample:too-much.",
                "room",
                "sample:too-much");
        assertThat(Ran.of("margin").err())
                .startsWith(
                        "Say what to do with margins: room, growth, gain or chance. See: shelterwright margin --help");
    }

    private static void assertRefused(String sentence, Object... arguments) {
        Object[] all = new Object[arguments.length + 1];
        all[0] = "margin";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        Ran ran = Ran.of(all);
        assertThat(ran.err()).isEqualTo(sentence + System.lineSeparator());
        assertThat(ran.status()).isEqualTo(2);
    }

    @Test
    void findsTheSmallestChangeAndSaysWhatDiffers() {
        Path out = folder.resolve("revision-b");

        Ran ran = Ran.of(
                "revise",
                "sample:river-post",
                "--change",
                "battery-box-24v:deeper=40,heavier=12",
                "--change",
                "sample-refrigerator:deeper=30,heavier=9",
                "--out",
                out,
                "--date",
                "2026-03-01");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.outLines().get(0))
                .isEqualTo("River Post: the changed list fits where everything stands; nothing has to move.");
        assertThat(ran.outLines().get(1)).startsWith("  Kept: 88 of 88 holes (100 %), 23 of 23 cables (100 %)");
        assertThat(ran.out())
                .contains("To be issued again:", "Mass statement: ", "Work pack: ", "4 files written to " + out);
        assertThat(LayoutFiles.read(out.resolve("layout.json"))
                        .layout()
                        .parts()
                        .item("battery-box-24v")
                        .size()
                        .x())
                .isEqualTo(740_000);
        assertThat(out.resolve("revisions.csv")).content().startsWith("kind,name,what,before,after,unit");
        assertThat(out.resolve("revisions.svg")).content().contains("River Post, two revisions", "Holes kept", "100 %");

        Ran compared = Ran.of("compare", "sample:river-post", out.resolve("layout.json"), "--json");
        JsonNode json = compared.json();
        assertThat(json.get("kept").get("holeShare").asDouble()).isEqualTo(1);
        assertThat(json.get("units").size()).isEqualTo(2);
        assertThat(json.get("reshaped").size()).isEqualTo(2);
        assertThat(Ran.of("compare", out.resolve("layout.json"), out.resolve("layout.json"))
                        .out())
                .contains("Nothing differs.");
    }

    @Test
    void aChangeThatIsNotUnderstoodIsToldInASentence() {
        assertThat(Ran.of("revise", "sample:river-post", "--change", "battery", "--out", folder)
                        .err())
                .contains("\"battery\" is not understood; write an item and what changes (mm, kg):"
                        + " battery-box-24v:deeper=40,heavier=12");
        assertThat(Ran.of("revise", "sample:river-post", "--change", "battery-box-24v:longer=3", "--out", folder)
                        .err())
                .contains("\"battery-box-24v:longer=3\" is not understood");
        assertThat(Ran.of("revise", "sample:river-post", "--change", "battery-box-24:deeper=3", "--out", folder)
                        .err())
                .isEqualTo("--change: The layout has no unit of the item \"battery-box-24\". Did you mean"
                        + " \"battery-box-24v\"?" + System.lineSeparator());
        assertThat(Ran.of("revise", "sample:river-post", "--out", folder).err())
                .isEqualTo("revise: Name a brief with the changed list, or what changes with --change."
                        + System.lineSeparator());
        assertThat(Ran.of("revise", "sample:river-post", "--moves", 0, "--out", folder)
                        .err())
                .isEqualTo("--moves: This is 0, but must be from 1 to 1000000000000." + System.lineSeparator());
    }
}
