package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;
import tools.jackson.databind.JsonNode;

class RouteVerbTest {
    @TempDir
    Path folder;

    @Test
    void routesEveryWireOfASampleAndPrintsTheLengthAgainstTheBound() throws Exception {
        Path out = folder.resolve("out");

        Ran ran = Ran.of("route", "sample:river-post", "--out", out);

        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isIn(0, 1);
        assertThat(ran.out())
                .contains("w23", "left power tray", " m laid in the body, ", "% above the least.", "layout.json")
                .doesNotContain("no route");
        Layout layout = LayoutFiles.read(out.resolve("layout.json")).layout();
        assertThat(layout.routes()).hasSameSizeAs(layout.brief().wires());
        assertThat(Files.list(out)).hasSize(1);
    }

    @Test
    void jsonHasTheDocumentedShape() {
        Ran ran = Ran.of("route", "sample:water-lab", "--json");

        JsonNode root = ran.json();
        assertThat(FitVerbTest.keys(root))
                .containsExactly(
                        "format",
                        "version",
                        "program",
                        "data",
                        "status",
                        "id",
                        "name",
                        "cost",
                        "bound",
                        "gap",
                        "wires",
                        "unrouted",
                        "counts",
                        "rows");
        assertThat(root.get("format").asString()).isEqualTo("shelterwright-result-route");
        assertThat(root.get("gap").asDouble()).isLessThan(0.02);
        JsonNode wire = root.get("wires").get(0);
        assertThat(FitVerbTest.keys(wire))
                .containsExactly("id", "from", "to", "cable", "lengthMm", "cutMm", "panel", "runs");
    }

    @Test
    void routesThatHoldStayWhenOnlyMissingOnesAreAskedFor() {
        Path out = folder.resolve("out");
        Layout before =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

        Ran.of("route", "sample:river-post", "--missing", "--out", out);

        Layout after = LayoutFiles.read(out.resolve("layout.json")).layout();
        before.routes().forEach((wire, route) -> {
            boolean alone =
                    before.brief().wires().stream().anyMatch(one -> one.id().equals(wire) && one.bus() == null);
            if (alone) {
                assertThat(after.routes()).containsEntry(wire, route);
            }
        });
    }
}
