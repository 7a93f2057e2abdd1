package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.file.LayoutFormats;
import tools.jackson.databind.JsonNode;

class CatalogVerbsTest {

    @TempDir
    Path folder;

    @Test
    void listsAllEntriesOrThoseOfOneKind() {
        Ran all = Ran.of("catalog", "list");
        Ran racks = Ran.of("catalog", "list", "--kind", "rack");
        Ran bodies = Ran.of("catalog", "list", "--kind", "body");

        assertThat(all.status()).isZero();
        assertThat(all.out()).contains("box-4200", "truck-two-axle", "battery-box-24v");
        assertThat(racks.outLines()).hasSizeGreaterThan(2).allMatch(line -> line.matches("(Id|rack-)\\S* .*"));
        assertThat(bodies.outLines()).hasSize(6);
        assertThat(bodies.out()).contains("4200 x 2300 x 2100");
    }

    @Test
    void unknownKindIsNamedWithTheNearestOne() {
        Ran ran = Ran.of("catalog", "list", "--kind", "rak");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip()).isEqualTo("--kind: \"rak\" is no kind. Did you mean \"rack\"?");
    }

    @Test
    void listIsThereAsJson() {
        JsonNode root = Ran.of("catalog", "list", "--kind", "carrier", "--json").json();

        assertThat(root.get("format").asString()).isEqualTo("shelterwright-result-catalog-list");
        JsonNode first = root.at("/entries/0");
        assertThat(FitVerbTest.keys(first)).containsExactly("entry", "kind", "id", "name", "size", "massKg");
        assertThat(first.get("size").isNull()).isTrue();
    }

    @Test
    void showsWhatAnEntrySays() {
        Ran item = Ran.of("catalog", "show", "rack-19-24u");
        Ran body = Ran.of("catalog", "show", "box-4200");
        Ran carrier = Ran.of("catalog", "show", "truck-two-axle");

        assertThat(item.out()).contains("rack-19-24u: Rack 19 in, 24 U", "600 x 600 x 1200", "96 kg");
        assertThat(body.out()).contains("4200 x 2300 x 2100", "way out");
        assertThat(carrier.out()).contains("axles", "rating");
    }

    @Test
    void shownAsJsonAnEntryIsAFileThatCanBeReadAgain() {
        Ran ran = Ran.of("catalog", "show", "rack-19-24u", "--json");

        assertThat(CatalogFormats.ITEM
                        .read(ran.out().getBytes(StandardCharsets.UTF_8), "shown")
                        .id())
                .isEqualTo("rack-19-24u");
    }

    @Test
    void transitCarsOutlinesAndLashingsAreListedAndShown() {
        Ran wagons = Ran.of("catalog", "list", "--kind", "flat-wagon");
        Ran car = Ran.of("catalog", "show", "covered-wagon-2-axle");
        Ran outline = Ran.of("catalog", "show", "road-eu", "--json");

        assertThat(wagons.out()).contains("flat-wagon-4-axle").doesNotContain("container-1aa");
        assertThat(car.out()).contains("14636 x 2580 of plywood", "Hbbins", "16300 kg", "right side wall 7218 x 3050");
        assertThat(CatalogFormats.OUTLINE
                        .read(outline.out().getBytes(StandardCharsets.UTF_8), "shown")
                        .id())
                .isEqualTo("road-eu");
        assertThat(Ran.of("catalog", "show", "chain-8").out()).contains("chain, turnbuckle", "40 kN", "600 to 3500");
    }

    @Test
    void unknownEntryIsNamedWithTheNearestOne() {
        assertThat(Ran.of("catalog", "show", "rack-19-24").err().strip())
                .isEqualTo("rack-19-24: There is no such entry in the catalog. Did you mean \"rack-19-24u\"?");
        assertThat(Ran.of("catalog", "show", "piano").err())
                .contains("List what is there with: shelterwright catalog list.");
    }

    @Test
    void ownEntriesTakeThePlaceOfBuiltInOnes() throws IOException {
        Path mine = Files.createDirectory(folder.resolve("mine"));
        String rack = Ran.of("catalog", "show", "rack-19-24u", "--json").out();
        Briefs.write(mine, "rack.json", rack.replace("Rack 19 in, 24 U", "Our rack"));

        Ran shown = Ran.of("catalog", "show", "rack-19-24u", "--catalog", mine);
        Ran checked = Ran.of("catalog", "check", mine);
        Ran fitted = Ran.of(
                "fit", Briefs.smallPost(folder), "--catalog", mine, "--moves", 5_000, "--out", folder.resolve("out"));
        Ran judged = Ran.of("check", folder.resolve("out/layout.json"));

        assertThat(shown.out()).startsWith("rack-19-24u: Our rack");
        assertThat(checked.out().strip()).isEqualTo("No problems: 1 items, 0 bodies, 0 carriers.");
        assertThat(fitted.status()).as(fitted.err()).isEqualTo(1);
        assertThat(judged.err()).contains("The item \"rack-19-24u\" differs in the catalog (name).");
    }

    @Test
    void checkTellsEveryProblemWithItsPlace() throws IOException {
        String rack = Ran.of("catalog", "show", "rack-19-24u", "--json").out();
        Path first = Briefs.write(folder, "first.json", rack.replace("\"name\"", "\"nam\""));
        Path second = Briefs.write(folder, "second.json", rack.substring(0, 40));
        Path third = folder.resolve("third.json");

        Ran ran = Ran.of("catalog", "check", first, second, third);
        Ran asJson = Ran.of("catalog", "check", first, second, third, "--json");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out())
                .contains(
                        first + ", line ",
                        "\"nam\" is not known",
                        second + ", line ",
                        third + ": There is no such file")
                .endsWith(" problems." + System.lineSeparator());
        assertThat(asJson.json().get("problems").size())
                .isEqualTo(ran.outLines().size() - 1);
    }

    @Test
    void importShowsTheMappingAndWritesEntries() {
        Path list = Briefs.write(folder, "list.csv", """
                Id,Name,Depth [mm],Width [mm],Height [mm],Mass [kg],Qty,Colour
                pump-case,Pump case,400,600,350,31.5,2,green
                hose-reel,Hose reel,300,500,500,18,1,red
                """);
        Path out = folder.resolve("items");

        Ran ran = Ran.of("catalog", "import", list, "--out", out);

        assertThat(ran.status()).as(ran.out() + ran.err()).isZero();
        assertThat(ran.out())
                .contains("C \"Depth [mm]\" is the depth in mm.", "H \"Colour\" is not used:", "pump-case", "31.5");
        assertThat(CatalogFormats.ITEM
                        .read(out.resolve("pump-case.json"))
                        .mass()
                        .massKg())
                .isEqualTo(31.5);
        assertThat(Ran.of("catalog", "check", out).status()).isZero();
        assertThat(Ran.of("catalog", "import", list, "--out", out).status())
                .as("the same again")
                .isZero();
    }

    @Test
    void importListsDoubtfulCellsWithTheirAddressAndEndsWithOne() {
        Path list = Briefs.write(folder, "list.csv", """
                Id,Name,Depth [mm],Width [mm],Height [mm],Mass [kg]
                pump-case,Pump case,400,600,350,about 30
                hose-reel,Hose reel,,500,500,18
                """);

        Ran ran = Ran.of("catalog", "import", list);
        JsonNode asJson = Ran.of("catalog", "import", list, "--json").json();

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out())
                .contains("F2", "Nothing was written. Name a folder with --out to write the entries.")
                .containsPattern("(?m)^  [A-F]3 +row left out");
        assertThat(asJson.get("status").asInt()).isEqualTo(1);
        assertThat(FitVerbTest.elements(asJson.get("notes"))).anySatisfy(note -> {
            assertThat(note.get("cell").asString()).isEqualTo("F2");
            assertThat(FitVerbTest.keys(note)).containsExactly("cell", "kind", "sentence");
        });
    }

    @Test
    void importWritesOverNothing() throws IOException {
        Path list = Briefs.write(
                folder,
                "list.csv",
                "Id,Name,Depth,Width,Height,Mass [kg]\npump,Pump,400,600,350,30\nreel,Reel,300,300,300,9\n");
        Path out = Files.createDirectory(folder.resolve("items"));
        Path mine = Briefs.write(out, "pump.json", "mine");

        Ran ran = Ran.of("catalog", "import", list, "--out", out);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).startsWith(mine + ": There is another file of this name already. Nothing was written.");
        assertThat(mine).hasContent("mine");
        assertThat(out.resolve("reel.json")).doesNotExist();
    }

    @Test
    void importWritesABriefThatCanBeFitted() throws IOException {
        Path list = Briefs.write(folder, "list.csv", """
                Id,Name,Depth [mm],Width [mm],Height [mm],Mass [kg],Qty
                pump-case,Pump case,400,600,350,31.5,2
                hose-reel,Hose reel,300,500,500,18,1
                """);
        Path items = folder.resolve("items");
        Path brief = folder.resolve("My post.json");

        Ran ran = Ran.of(
                "catalog",
                "import",
                list,
                "--out",
                items,
                "--brief",
                brief,
                "--body",
                "box-4200",
                "--carrier",
                "truck-two-axle");
        Ran fit = Ran.of(
                "fit",
                brief,
                "--catalog",
                items,
                "--moves",
                "2000",
                "--alternatives",
                "1",
                "--out",
                folder.resolve("out"));

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("  shelterwright fit " + brief + " --catalog " + items);
        Brief written = LayoutFormats.BRIEF.read(Files.readAllBytes(brief), "brief");
        assertThat(written.id()).isEqualTo("my-post");
        assertThat(written.carrier()).isEqualTo("truck-two-axle");
        assertThat(written.units()).extracting(UnitSpec::id).containsExactly("pump-case-1", "pump-case-2", "hose-reel");
        assertThat(written.units())
                .extracting(UnitSpec::name)
                .containsExactly("Pump case 1", "Pump case 2", "Hose reel");
        assertThat(fit.status())
                .as("no centre of mass is known: not assessed, never met")
                .isEqualTo(1);
        assertThat(fit.out()).contains("Pump case 1 has no centre of mass.");
    }

    @Test
    void importRefusesABriefThatLacksSomething() {
        Path list =
                Briefs.write(folder, "list.csv", "Id,Name,Depth,Width,Height,Mass [kg]\npump,Pump,400,600,350,30\n");
        Path items = folder.resolve("items");
        Path brief = folder.resolve("brief.json");

        assertThat(Ran.of("catalog", "import", list, "--brief", brief, "--body", "box-4200")
                        .err())
                .isEqualToIgnoringNewLines(
                        "--out: The brief needs the entries that it asks for. Name a folder for them" + " with --out.");
        assertThat(Ran.of("catalog", "import", list, "--out", items, "--brief", brief)
                        .err())
                .isEqualToIgnoringNewLines(
                        "--body: A brief needs a body. Name one of: shelterwright catalog list --kind body.");
        assertThat(Ran.of("catalog", "import", list, "--out", items, "--body", "box-4200")
                        .err())
                .isEqualToIgnoringNewLines(
                        "--brief: A body or carrier is of use only for a brief. Name its file with --brief.");
        Ran unknown = Ran.of("catalog", "import", list, "--out", items, "--brief", brief, "--body", "bx-4200");
        assertThat(unknown.status()).isEqualTo(2);
        assertThat(unknown.err()).contains("The body \"bx-4200\" is not known. Did you mean \"box-4200\"?");
        assertThat(items).doesNotExist();
        assertThat(brief).doesNotExist();
        Path file = Briefs.write(folder, "no-folder", "");
        Ran nowhere = Ran.of(
                "catalog", "import", list, "--out", items, "--brief", file.resolve("b.json"), "--body", "box-4200");
        assertThat(nowhere.status()).as(nowhere.err()).isEqualTo(2);
        assertThat(items).as("neither is written").doesNotExist();
    }
}
