package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Occupant;

class BriefCheckTest {
    private static final String TEXT = new String(LayoutFormats.BRIEF.write(SmallPost.brief()), StandardCharsets.UTF_8);

    private static Findings check(String text, Catalog catalog) {
        Sourced<Brief> read = LayoutFormats.BRIEF.open(new InputFile("b.json", text.getBytes(StandardCharsets.UTF_8)));
        return BriefCheck.of(read.value(), read.places(), catalog, List.of());
    }

    private static Catalog with(Item item) {
        return Catalog.of(
                SmallPost.CATALOG.items().stream()
                        .map(one -> one.id().equals(item.id()) ? item : one)
                        .toList(),
                SmallPost.CATALOG.bodies(),
                SmallPost.CATALOG.carriers());
    }

    @Test
    void findsNothingInASoundBrief() {
        Findings findings = check(TEXT, SmallPost.CATALOG);

        assertThat(findings.problems()).isEmpty();
        assertThat(findings.doubts()).isEmpty();
        findings.requireUsable();
    }

    @Test
    void keepsWhoIsInside() {
        List<Occupant> occupants =
                List.of(new Occupant("table-1", Situation.ON_STATION), new Occupant("table-1", Situation.ON_STATION));
        byte[] text = LayoutFormats.BRIEF.write(SmallPost.brief().withOccupants(occupants));

        Brief read = LayoutFormats.BRIEF.open(new InputFile("b.json", text)).value();

        assertThat(read.occupants()).isEqualTo(occupants);
        assertThat(TEXT).doesNotContain("occupants");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"body\": \"box\"|\"body\": \"bx\"|The body \"bx\" is not known. Did you mean \"box\"?",
                "\"carrier\": \"truck\"|\"carrier\": \"lorry\"|The carrier \"lorry\" is not known. Known are: truck, trailer.",
                "\"carrier\": \"trailer\"|\"carrier\": \"truck\"|The trailer \"truck\" is the carrier itself, and nothing tows"
                        + " itself. Name another carrier entry, of a trailer.",
                "\"item\": \"rack\"|\"item\": \"rck\"|The item \"rck\" is not known. Did you mean \"rack\"?",
                "\"id\": \"generator-1\"|\"id\": \"rack-1\"|The unit id \"rack-1\" is given twice. Rename one of them.",
                "[\"rack-1\", \"rack-2\"]|[\"rack-1\", \"rack-3\"]|The unit \"rack-3\" is not known. Did you mean \"rack-1\"?",
                "[\"rack-1\", \"rack-2\"]|[\"rack-1\"]|This wish names 1 units; it needs at least 2.",
                ", \"distance\": 300||A wish for units near each other or apart needs a \"distance\" of at least 0 mm.",
                "\"face\": \"left\"|\"face\": \"top\"|This wish needs a \"face\": front, rear, left or right.",
                "rack-1/power|rack-1|The end \"rack-1\" of wire \"w1\" must name a unit and its port, such as"
                        + " \"rack-1/power\", or an entry panel, such as \"body/panel 1\".",
                "rack-1/power|rack-1/powr|The end \"rack-1/powr\" of wire \"w1\" names a port that unit rack-1 does not"
                        + " have. Did you mean \"power\"?",
                "body/panel 1|body/panel 2|The entry panel \"panel 2\" is not known. Did you mean \"panel 1\"?",
                "access.walkway-width|access.walkway-widht|The limit \"access.walkway-widht\" is not known. Did you mean"
                        + " \"access.walkway-width\"?",
                "\"crew\": 2|\"crew\": 2, \"occupants\": [{\"unit\": \"rack-9\", \"situation\": \"on-station\"}]|The unit"
                        + " \"rack-9\" is not known. Did you mean \"rack-1\"?",
                "\"crew\": 2|\"crew\": -1|The crew of -1 must be at least 0.",
                "\"crew\": 2|\"crew\": 2, \"ruleSets\": [\"none\"]|The rule set \"none\" is not known.",
            })
    void refusesWithPlaceAndSentence(String old, String changed, String sentence) {
        assertThat(TEXT).contains(old);

        List<Problem> problems = check(TEXT.replace(old, changed == null ? "" : changed), SmallPost.CATALOG)
                .problems();

        assertThat(problems).isNotEmpty().allSatisfy(problem -> {
            assertThat(problem.sentence()).isEqualTo(sentence);
            assertThat(problem.where()).matches("b\\.json, line \\d+, column \\d+");
        });
    }

    @Test
    void refusesATruckAsATrailerAndAWireToItselfWithTheirPlaces() {
        String swapped = TEXT.replace("\"carrier\": \"truck\"", "\"carrier\": \"drawn\"")
                .replace("\"carrier\": \"trailer\"", "\"carrier\": \"truck\"")
                .replace("\"carrier\": \"drawn\"", "\"carrier\": \"trailer\"");

        assertThat(check(swapped, SmallPost.CATALOG).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.sentence())
                    .isEqualTo(
                            "The trailer \"truck\" is a truck, which is not towed. Name a carrier entry of a trailer.");
            assertThat(problem.where()).matches("b\\.json, line \\d+, column \\d+");
        });
        assertThatThrownBy(() -> check(TEXT.replace("body/panel 1", "rack-1/power"), SmallPost.CATALOG))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("b.json, line")
                .hasMessageContaining(
                        "The wire \"w1\" goes from rack-1/power to itself. Give the port that it goes to as"
                                + " \"to\".");
    }

    @Test
    void refusesABriefWithoutUnits() {
        String text = """
                {"format": "shelterwright-brief", "version": 1, "id": "a", "name": "A", "body": "box", "crew": 0,
                 "units": []}
                """;

        assertThat(check(text, SmallPost.CATALOG).problems())
                .containsExactly(
                        new Problem("b.json, line 2, column 11", "The brief asks for no units. List at least one."));
    }

    @Test
    void asksWhetherMorePeopleThanSeatsAreRight() {
        Findings findings = check(TEXT.replace("\"crew\": 2", "\"crew\": 3"), SmallPost.CATALOG);

        assertThat(findings.problems()).isEmpty();
        assertThat(findings.doubts())
                .extracting(Problem::sentence)
                .containsExactly("The crew of 3 is more than the 2 seats of the cab. Is it right?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "table|[700, 2300, 740]|\"mounting\": {\"surfaces\": [\"floor\"]}, \"turns\": [0]|The unit \"table-1\" cannot"
                        + " be placed: the item table of 700 × 2300 × 740 mm is larger than the inside of body box, 4000 ×"
                        + " 2200 × 2000 mm, at every turn that it allows. Take a smaller item or a larger body.",
                "table|[700, 1200, 740]|\"mounting\": {\"surfaces\": [\"wall\"], \"lowestAbove\": 1300}|The unit \"table-1\""
                        + " cannot be placed: the item table finds nothing in body box to land on (wall: it may hang no"
                        + " lower than 1300 mm and is then higher than the roof). Take another item or body, or change how"
                        + " it is mounted.",
                "table|[700, 1200, 740]|\"mounting\": {\"surfaces\": [\"floor\", \"wall\"]}, \"fixings\": [{\"name\": \"F1\","
                        + " \"at\": [1, 1, 0], \"face\": \"bottom\", \"thread\": \"M16\"}]|The unit \"table-1\" cannot be"
                        + " placed: the item table finds nothing in body box to land on (floor: no hard point takes its"
                        + " fixings M16 at its bottom; wall: no hard point takes its fixings M16 at its bottom). Take"
                        + " another item or body, or change how it is mounted.",
                "table|[700, 1200, 740]|\"mounting\": {\"surfaces\": [\"under-unit\"]}|The unit \"table-1\" cannot be placed:"
                        + " the item table finds nothing in body box to land on (under unit: no other unit has a support"
                        + " with room for it). Take another item or body, or change how it is mounted.",
            })
    void refusesItemsThatCouldLandNowhere(String id, String size, String more, String sentence) {
        Findings findings = check(TEXT, with(SmallPost.item(id, size, more)));

        assertThat(findings.problems()).extracting(Problem::sentence).contains(sentence);
    }

    @Test
    void letsAnItemThatIsTooLongOneWayInTheOther() {
        Item turned = SmallPost.item("table", "[2300, 700, 740]", "\"mounting\": {\"surfaces\": [\"floor\"]}");
        Item upright = SmallPost.item(
                "table", "[700, 2300, 740]", "\"mounting\": {\"surfaces\": [\"floor\"]}, \"turns\": [0, 90]");

        assertThat(check(TEXT, with(turned)).problems())
                .noneMatch(one -> one.sentence().contains("larger"));
        assertThat(check(TEXT, with(upright)).problems())
                .noneMatch(one -> one.sentence().contains("larger"));
    }
}
