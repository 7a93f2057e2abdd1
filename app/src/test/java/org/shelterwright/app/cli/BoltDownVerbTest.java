package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import tools.jackson.databind.JsonNode;

class BoltDownVerbTest {
    @TempDir
    Path folder;

    @Test
    void showsEveryStepOfASample() {
        Ran ran = Ran.of("bolt-down", "sample:river-post");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.outLines().get(0)).startsWith("River Post, bolt-down: every limit is met");
        assertThat(ran.out()).contains("27 steps, ", "with 2 fitters.", "Telemetry rack 1", "front emergency door");
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void writesLayoutAndWorkPack() {
        Ran ran = Ran.of("bolt-down", "sample:water-lab", "--out", folder.resolve("pack"));

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(folder.resolve("pack"))
                .isDirectoryContaining("glob:**/layout.json")
                .isDirectoryContaining("glob:**/12-work-pack.pdf")
                .isDirectoryContaining("glob:**/12-work-pack.html")
                .isDirectoryContaining("glob:**/13-pick-list.csv")
                .isDirectoryContaining("glob:**/14-labels.pdf");
        Layout layout = LayoutFiles.read(folder.resolve("pack/layout.json")).layout();
        assertThat(layout.boltDown()).isNotNull();
    }

    @Test
    void keepsWhatIsAskedToBeBefore() {
        Ran ran = Ran.of(
                "bolt-down", "sample:river-post", "--before", "chart-table,winch-crate", "--fitters", "3", "--json");

        JsonNode root = ran.json();
        assertThat(root.get("format").asString()).isEqualTo("shelterwright-result-bolt-down");
        assertThat(root.get("stuck").size()).isZero();
        assertThat(root.get("schedule").get("fitters").asInt()).isEqualTo(3);
        int table = -1;
        int crate = -1;
        for (int i = 0; i < root.get("steps").size(); i++) {
            String unit = root.get("steps").get(i).get("unit").asString();
            table = unit.equals("chart-table") ? i : table;
            crate = unit.equals("winch-crate") ? i : crate;
        }
        assertThat(table).isNotNegative().isLessThan(crate);
    }

    @Test
    void explainsAContradiction() {
        Ran ran = Ran.of("bolt-down", "sample:river-post", "--before", "screen-1,desk");

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("Screen 1 must be in before Desk (set)")
                .contains("Desk must be in before Screen 1 (it carries it)");
    }

    @Test
    void saysWhatIsWrongWithAWish() {
        assertThat(Ran.of("bolt-down", "sample:river-post", "--before", "rack-1")
                        .err())
                .contains("--before: \"rack-1\" must be two ids of units with a comma between, such as rack-1,desk.");
        assertThat(Ran.of("bolt-down", "sample:river-post", "--before", "rack-1,rack-9")
                        .err())
                .contains("No unit \"rack-9\" is placed.");
        assertThat(Ran.of("bolt-down", "sample:river-post", "--before", "desk,desk")
                        .err())
                .contains("The unit \"desk\" cannot be in before itself.");
        assertThat(Ran.of("bolt-down", "sample:river-post", "--fitters", "9").err())
                .contains("The number of fitters must be 1 to 8, but is 9.");
    }

    @Test
    void weighsWhatWasBuilt() throws IOException {
        Path scale = Files.writeString(folder.resolve("scale.json"), """
                {"format": "shelterwright-weighing", "version": 1, "layout": "river-post", "date": "2026-01-15",
                 "supports": [{"name": "rear", "x": 0, "y": 1150, "levelKg": 1900, "uncertaintyKg": 2},
                              {"name": "front", "x": 4200, "y": 1150, "levelKg": 1900, "uncertaintyKg": 2}],
                 "pivotHeight": 0}
                """);
        Ran ran = Ran.of("weigh", "sample:river-post", "--scale", scale);

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out()).contains("River Post, weighed: not as predicted.", "3800.0 ± 2.8", "2100 ± 2");
        assertThat(ran.out()).contains("If it is one thing, it is at x", "Near there: ", "The least changes of masses");
    }

    @Test
    void weighNeedsSomethingToHoldAgainst() throws IOException {
        assertThat(Ran.of("weigh", "sample:river-post").err())
                .isEqualToNormalizingNewlines("weigh: Name a record (--record), scale readings (--scale), or both.\n");
        Path record = Files.writeString(folder.resolve("record.json"), """
                {"format": "shelterwright-as-built", "version": 1, "layout": "water-lab", "pack": "x",
                 "exported": "2026-01-15T17:00", "steps": []}
                """);
        Ran other = Ran.of("weigh", "sample:river-post", "--record", record);
        assertThat(other.status()).isEqualTo(2);
        assertThat(other.err())
                .contains(
                        "It is of the layout \"water-lab\", but the layout here is \"river-post\". Take the right one.");
    }
}
