package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import tools.jackson.databind.JsonNode;

class CheckVerbTest {

    @TempDir
    Path folder;

    @Test
    void answersEveryLimitTheTightestFirst() {
        Ran ran = Ran.of("check", Briefs.smallPost(folder));

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).isEmpty();
        List<String> lines = ran.outLines();
        assertThat(lines.get(0)).matches("Small Post: 1 broken, \\d+ not assessed of \\d+ limits\\.");
        int titles = lines.indexOf(lines.stream()
                .filter(line -> line.startsWith("Verdict"))
                .findFirst()
                .orElseThrow());
        assertThat(lines.get(titles)).matches("Verdict +Use +Demand +Capacity +Unit +State +Limit");
        assertThat(lines.get(titles + 1)).startsWith("broken").contains("Units to place");
        assertThat(lines.get(titles + 2)).isEqualTo("    3 units to place: Rack 1, Desk and Battery box 1.");
        List<String> verdicts = lines.subList(titles + 1, lines.size()).stream()
                .takeWhile(line -> !line.isBlank())
                .filter(line -> !line.startsWith(" "))
                .map(line -> line.split(" {2,}")[0])
                .distinct()
                .toList();
        assertThat(verdicts).containsExactly("broken", "not assessed", "met");
    }

    @Test
    void columnsStandBeneathTheirTitles() {
        List<String> lines = Ran.of("check", Briefs.smallPost(folder)).outLines();

        String titles = lines.stream()
                .filter(line -> line.startsWith("Verdict"))
                .findFirst()
                .orElseThrow();
        int limit = titles.indexOf("Limit");
        assertThat(lines.stream()
                        .skip(lines.indexOf(titles) + 1L)
                        .takeWhile(line -> !line.isBlank())
                        .filter(line -> !line.startsWith(" ")))
                .isNotEmpty()
                .allSatisfy(line -> {
                    assertThat(line.charAt(limit - 1)).isEqualTo(' ');
                    assertThat(line.charAt(limit)).isUpperCase();
                });
    }

    @Test
    void noLineIsWiderThanAHundredCharactersAndStatesAreToldBelow() {
        for (String sample : List.of("sample:river-post", "sample:water-lab", "sample:too-much")) {
            List<String> lines = Ran.of("check", sample).outLines();

            assertThat(lines).as(sample).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
            int legend = lines.indexOf("State  is");
            assertThat(lines.get(legend + 1))
                    .as(sample)
                    .matches(" +1  (on (the road|station)|in service|while bolting down).*");
            assertThat(lines.get(lines.size() - 1))
                    .matches("\\d+ more rows are met with more to spare, and \\d+ limits do not apply: see them with"
                            + " --all\\.");
        }
    }

    @Test
    void showsOnlyTheSubjectsThatAreAskedForButJudgesAll() {
        Ran ran = Ran.of("check", Briefs.smallPost(folder), "--subject", "mass", "--json");

        assertThat(ran.status()).isEqualTo(1);
        assertThat(FitVerbTest.elements(ran.json().get("rows")))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("subject").asString()).isEqualTo("mass"));
        assertThat(FitVerbTest.keys(ran.json().get("subjects"))).contains("fit", "access", "mass");
    }

    @Test
    void unknownSubjectIsNamedWithTheNearestOne() {
        Ran ran = Ran.of("check", Briefs.smallPost(folder), "--subject", "axels");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("\"axels\" is no subject. Did you mean \"axles\"?");
    }

    @Test
    void allShowsTheSentenceAndSourceOfMetRowsToo() {
        Path brief = Briefs.smallPost(folder);

        String shortened = Ran.of("check", brief, "--subject", "fit").out();
        String all = Ran.of("check", brief, "--subject", "fit", "--all").out();

        assertThat(all).contains("[fit.overlap]");
        assertThat(shortened).doesNotContain("[fit.overlap]").contains("Overlap");
    }

    @Test
    void jsonHasTheDocumentedShape() {
        Ran ran = Ran.of("check", Briefs.smallPost(folder), "--json");

        JsonNode root = ran.json();
        assertThat(FitVerbTest.keys(root))
                .containsExactly(
                        "format", "version", "program", "data", "status", "id", "name", "counts", "subjects", "rows");
        assertThat(root.get("format").asString()).isEqualTo("shelterwright-result-check");
        assertThat(root.get("version").asInt()).isEqualTo(1);
        assertThat(root.get("status").asInt()).isEqualTo(1);
        assertThat(FitVerbTest.keys(root.get("counts"))).containsExactly("broken", "close", "not-assessed", "met");
        List<JsonNode> rows = FitVerbTest.elements(root.get("rows"));
        assertThat(rows)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(FitVerbTest.keys(row))
                        .containsExactly(
                                "limit",
                                "subject",
                                "title",
                                "units",
                                "place",
                                "state",
                                "sense",
                                "demand",
                                "nominal",
                                "capacity",
                                "use",
                                "margin",
                                "unit",
                                "verdict",
                                "finding",
                                "mend",
                                "source",
                                "trust",
                                "accepted"));
        JsonNode first = rows.get(0);
        assertThat(first.get("limit").asString()).isEqualTo("fit.placed");
        assertThat(first.get("verdict").asString()).isEqualTo("broken");
        assertThat(first.get("demand").asDouble()).isEqualTo(3);
        assertThat(first.get("capacity").asDouble()).isZero();
        assertThat(first.get("margin").asDouble()).isEqualTo(-3);
        assertThat(FitVerbTest.elements(first.get("units"))).hasSize(3);
    }

    @Test
    void samplesAreCheckedByName() {
        for (String sample : List.of("river-post", "water-lab", "too-much")) {
            Ran ran = Ran.of("check", "sample:" + sample);

            assertThat(ran.status()).as(sample + ": " + ran.err()).isIn(0, 1);
        }
    }

    @Test
    void acceptedRowIsShownAsItIsWithTheReasonBesideIt() {
        Ran.with(FitVerbTest.nothingMoves(), "fit", Briefs.smallPost(folder), "--out", folder);
        Path file = folder.resolve("layout.json");
        Layout found = LayoutFiles.read(file).layout();
        Acceptance acceptance = new Acceptance(
                "fit.placed", List.of("desk", "battery-1"), "They come later.", "A. Fitter", "2026-03-01");
        Layout accepted = found.withAcceptances(List.of(acceptance));
        LayoutFiles.write(accepted, file, Fingerprint.of(file));

        Ran ran = Ran.of("check", file);
        Ran asJson = Ran.of("check", file, "--json");

        assertThat(ran.status()).as("still broken").isEqualTo(1);
        assertThat(ran.out()).contains("    Accepted by A. Fitter on 2026-03-01: They come later.");
        JsonNode row = FitVerbTest.elements(asJson.json().get("rows")).stream()
                .filter(one -> one.get("limit").asString().equals("fit.placed"))
                .findFirst()
                .orElseThrow();
        assertThat(row.get("verdict").asString()).isEqualTo("broken");
        assertThat(row.at("/accepted/reason").asString()).isEqualTo("They come later.");
    }
}
