package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.samples.Samples;
import tools.jackson.databind.JsonNode;

class LoadJourneyTest {
    @TempDir
    Path folder;

    private static List<String> names(Path out) throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replace('\u2009', ' ');
        }
    }

    @Test
    void writesTheJourneyAndAllItsDocuments() throws IOException {
        Path out = folder.resolve("move");

        Ran ran = Ran.of("load", "sample:road-rail-move", "--out", out, "--date", "2026-03-01");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.outLines().get(0)).startsWith("Road-Rail Move: every limit is met");
        assertThat(ran.out())
                .contains("2 rail", "River Post on its truck", "Wagon 1: ", "13 lashings", "18 files written to");
        assertThat(names(out))
                .containsExactly(
                        "00-contents.txt",
                        "01-does-it-go.pdf",
                        "01-ledger.csv",
                        "01-legs.csv",
                        "02-load-sheet-leg-1-lorry-1.pdf",
                        "02-load-sheet-leg-1-lorry-1.svg",
                        "02-load-sheet-leg-2-wagon-1.pdf",
                        "02-load-sheet-leg-2-wagon-1.svg",
                        "02-load-sheet-leg-2-wagon-2.pdf",
                        "02-load-sheet-leg-2-wagon-2.svg",
                        "02-load-sheet-leg-3-lorry-1.pdf",
                        "02-load-sheet-leg-3-lorry-1.svg",
                        "03-packing-lists.pdf",
                        "03-positions.csv",
                        "04-placards.pdf",
                        "05-lashings.csv",
                        "07-journey.xlsx",
                        "journey.json");
        String sheet = text(out.resolve("02-load-sheet-leg-2-wagon-1.pdf"));
        assertThat(sheet)
                .contains(
                        "Planning aid.",
                        "Varn valley route, sheet 2, least curve 250 m",
                        "bogie 1",
                        "Lashings",
                        "A1",
                        "Chain 8 mm")
                .contains("hand brakes set, gears in neutral", "Neither to be humped nor loose shunted.", "Cautions");
        assertThat(text(out.resolve("04-placards.pdf"))).contains("Generator trailer", "for lashings", "kg");
        assertThat(text(out.resolve("03-packing-lists.pdf"))).contains("Unloading order: ");
        assertThat(Files.readString(out.resolve("05-lashings.csv"))).contains("rear right tie-down eye");
    }

    @Test
    void theSameJourneyGivesTheSameBytes() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        Ran.of("load", "sample:road-rail-move", "--out", one, "--date", "2026-03-01");
        Ran again = Ran.of("load", one.resolve("journey.json"), "--out", two, "--date", "2026-03-01");

        assertThat(again.status()).as(again.err()).isZero();
        assertThat(again.err()).isEmpty();
        List<String> differing = new ArrayList<>();
        for (String name : names(one)) {
            boolean same = Files.mismatch(one.resolve(name), two.resolve(name)) < 0;
            if (!same && !name.endsWith(".xlsx")) {
                differing.add(name);
            }
        }
        assertThat(differing).isEmpty();
    }

    @Test
    void tellsLegsAndRowsAsJson() {
        Ran ran = Ran.of("load", "sample:road-rail-move", "--json");

        assertThat(ran.status()).as(ran.err()).isZero();
        JsonNode json = ran.json();
        assertThat(json.get("format").asString()).isEqualTo("shelterwright-result-load");
        assertThat(json.get("legs")).hasSize(3);
        assertThat(json.get("legs").get(1).get("mode").asString()).isEqualTo("rail");
        assertThat(json.get("table").size()).isGreaterThan(25);
        assertThat(json.get("counts").get("broken").asInt()).isZero();
        assertThat(json.get("folder").isNull()).isTrue();
    }

    @Test
    void statusIsOneWhereALimitIsOpen() throws IOException {
        String text = new String(Samples.journey("road-rail-move").bytes(), StandardCharsets.UTF_8);
        Path file = Files.writeString(folder.resolve("j.json"), text.replaceFirst("\"grossKg\": 24000,\\s*", ""));

        Ran ran = Ran.of("load", file);

        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(ran.out())
                .contains("not assessed, leg 3: Bridge at Sill Ford, Water Lab")
                .contains("The gross that Bridge at Sill Ford takes is not known. Ask its keeper");
    }

    @Test
    void acceptedRowIsShownAsItIsWithTheReasonBesideIt() throws IOException {
        String text = new String(Samples.journey("road-rail-move").bytes(), StandardCharsets.UTF_8)
                .replaceFirst("\"grossKg\": 24000,\\s*", "");
        Path file = folder.resolve("j.json");
        Files.writeString(file, text);
        JsonNode open = first(Ran.of("load", file, "--json").json());
        Files.writeString(
                file,
                text.replace(
                        "\"id\": \"road-in\",",
                        "\"id\": \"road-in\", \"acceptances\": [{\"limit\": " + open.get("limit") + ", \"units\": "
                                + open.get("units")
                                + ", \"reason\": \"The keeper was rung up.\", \"by\": \"P. Planner\", \"date\": \"2026-03-01\"}],"));
        Path out = folder.resolve("out");

        Ran ran = Ran.of("load", file, "--out", out, "--date", "2026-03-01");
        JsonNode again = first(Ran.of("load", file, "--json").json());

        String told = "Accepted by P. Planner on 2026-03-01: The keeper was rung up.";
        assertThat(open.get("accepted").isNull()).isTrue();
        assertThat(ran.status()).as("still not assessed").isEqualTo(1);
        assertThat(ran.out()).contains("    " + told);
        assertThat(again.get("verdict").asString()).isEqualTo("not-assessed");
        assertThat(again.at("/accepted/by").asString()).isEqualTo("P. Planner");
        assertThat(text(out.resolve("01-does-it-go.pdf")).replaceAll("\\s+", " "))
                .contains(told);
        assertThat(Files.readString(out.resolve("journey.json"))).contains("The keeper was rung up.");
    }

    @Test
    void aCrateOfUnknownMassIsPackedAndWhatItsMassDecidesIsNotAssessed() throws IOException {
        String text = new String(Samples.journey("forty-crates").bytes(), StandardCharsets.UTF_8);
        Path file = Files.writeString(folder.resolve("j.json"), text.replaceFirst("\"massKg\": 977, ", ""));

        Ran ran = Ran.of("load", file);

        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("Pump crate 1,")
                .contains("not assessed, leg 1: Load, ")
                .contains("Pump crate 1 has no mass. Give massKg of piece crate-01.");
    }

    private static JsonNode first(JsonNode json) {
        return FitVerbTest.elements(json.get("legs").get(2).get("rows")).stream()
                .filter(row -> row.get("verdict").asString().equals("not-assessed"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void badInputIsRefusedInOneSentence() throws IOException {
        String text = new String(Samples.journey("road-rail-move").bytes(), StandardCharsets.UTF_8);
        Path outside = Files.writeString(folder.resolve("o.json"), text.replace("sample:river-post", "../river.json"));
        Path noCar =
                Files.writeString(folder.resolve("c.json"), text.replace("flat-wagon-4-axle", "flat-wagon-40-axle"));

        Ran escaped = Ran.of("load", outside);
        assertThat(escaped.status()).isEqualTo(2);
        assertThat(escaped.err()).contains("A layout must lie beside its journey or in a folder below it.");
        Ran unknown = Ran.of("load", noCar);
        assertThat(unknown.status()).isEqualTo(2);
        assertThat(unknown.err())
                .contains("The transit car \"flat-wagon-40-axle\" is not known. Did you mean \"flat-wagon-4-axle\"?");
        Ran sample = Ran.of("load", "sample:road-rail-mov");
        assertThat(sample.err())
                .isEqualTo("sample:road-rail-mov: There is no such sample journey. Did you mean \"road-rail-move\"?"
                        + System.lineSeparator());
        Ran none = Ran.of("load");
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err())
                .startsWith("load: Nothing to load is named. Name a journey, or a set of problems with --set.");
        Ran both = Ran.of("load", noCar, "--set", "x", "--problem", 1);
        assertThat(both.err())
                .startsWith(noCar.toString().isEmpty() ? "" : "load: Both a journey and a set of problems are named.");
    }
}
