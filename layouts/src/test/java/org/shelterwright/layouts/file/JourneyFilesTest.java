package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.SampleJourney;

class JourneyFilesTest {
    @TempDir
    Path folder;

    private static String sample() {
        return new String(Samples.journey("road-rail-move").bytes(), StandardCharsets.UTF_8);
    }

    private static OpenedJourney open(String text) {
        return SampleJourney.open(new InputFile("journey.json", text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void theSampleReadsWithoutDoubts() {
        OpenedJourney opened = SampleJourney.opened();

        assertThat(opened.doubts()).isEmpty();
        assertThat(opened.journey().legs()).hasSize(3);
        assertThat(opened.journey().pieces()).hasSize(9);
        assertThat(opened.parts().layouts()).containsOnlyKeys("sample:river-post", "sample:water-lab");
        assertThat(Samples.journeys()).containsExactly("forty-crates", "road-rail-move");
        assertThat(Samples.names()).doesNotContain("road-rail-move");
    }

    @Test
    void aSavedJourneyHoldsAllThatItUsesAndReadsBackTheSame() {
        OpenedJourney opened = SampleJourney.opened();
        Journey journey = SampleJourney.loaded().journey();
        Path file = folder.resolve("journey.json");

        Fingerprint saved = JourneyFiles.write(journey, opened.parts(), file, Fingerprint.NONE);
        OpenedJourney again = JourneyFiles.read(
                InputFile.read(file),
                SampleJourney.CATALOG,
                from -> {
                    throw new AssertionError("looked up " + from);
                },
                RuleSets.builtIn());

        assertThat(again.fingerprint()).isEqualTo(saved);
        assertThat(again.doubts()).isEmpty();
        assertThat(again.journey()).isEqualTo(journey);
        assertThat(JourneyFiles.bytes(again.journey(), again.parts()))
                .isEqualTo(JourneyFiles.bytes(journey, opened.parts()));
    }

    @Test
    void acceptedRowsOfALegAreKept() {
        OpenedJourney opened = SampleJourney.opened();
        Acceptance accepted = new Acceptance(
                "transport.outline", List.of("river-post"), "The railway agreed.", "P. Planner", "2026-03-01");
        Leg leg = opened.journey().legs().get(1);
        Journey journey = opened.journey().with(leg.withAcceptances(List.of(accepted)));

        String text = new String(JourneyFiles.bytes(journey, opened.parts()), StandardCharsets.UTF_8);

        assertThat(open(text).journey().leg(leg.id()).orElseThrow().acceptances())
                .containsExactly(accepted);
        assertThatThrownBy(() -> open(text.replace("\"The railway agreed.\"", "\"\"")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("An accepted limit needs a reason and a name.");
    }

    @Test
    void aCopyChangedByHandAndACatalogThatDiffersAreDoubted() {
        OpenedJourney opened = SampleJourney.opened();
        String text = new String(JourneyFiles.bytes(opened.journey(), opened.parts()), StandardCharsets.UTF_8);

        OpenedJourney changed = open(text.replace("\"tareKg\": 24500", "\"tareKg\": 23500"));

        assertThat(changed.doubts()).hasSize(2);
        assertThat(changed.doubts().get(0).sentence())
                .isEqualTo(
                        "The copies in this file were changed since the program saved it. Look at them before trusting their"
                                + " figures.");
        assertThat(changed.doubts().get(1).sentence())
                .isEqualTo(
                        "The transit car \"flat-wagon-4-axle\" of the catalog differs from the copy in this journey (tareKg)."
                                + " The copy is used.");
        assertThat(changed.parts()
                        .transit()
                        .car("flat-wagon-4-axle")
                        .orElseThrow()
                        .tareKg())
                .isEqualTo(23_500);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"car\": \"lorry-platform\"|\"car\": \"lorry-plattform\"|The transit car \"lorry-plattform\" is not known. Did you mean"
                        + " \"lorry-platform\"?",
                "\"outline\": \"route-varn\"|\"outline\": \"route-van\"|The outline \"route-van\" is not known. Did you mean"
                        + " \"route-varn\"?",
                "\"lineCategory\": \"C3\"|\"lineCategory\": \"C9\"|The line category \"C9\" is not known.",
                "\"rail-loading\"|\"rail-loadings\"|The rule set \"rail-loadings\" is not known. Did you mean \"rail-loading\"?",
                "\"rail-combined-sideways\"|\"rail-sideways\"|The load case \"rail-sideways\" is not known.",
                "\"loads\": [\"lorry-1\"]|\"loads\": [\"lorry-2\"]|The load \"lorry-2\" is not known. Did you mean \"lorry-1\"?",
                "\"vehicle\": \"water-lab\"|\"vehicle\": \"crate-1\"|The piece \"crate-1\" is no vehicle and cannot go on its own wheels"
                        + " here.",
                "\"part\": \"trailer\"|\"part\": \"trolley\"|has the value \"trolley\", which is not known.",
                "\"massKg\": 1120|\"massKg\": -5|The mass of a crate (kg) of -5.0 must be from 0.0 to 100000.0.",
                "\"centre\": [600, 500, 400]|\"centre\": [600, 500, 4000]|The centre of mass of a crate must lie within its size.",
                "\"id\": \"crate-2\"|\"id\": \"crate-1\"|The id \"crate-1\" of a piece or load is given twice. Rename one of them.",
                "\"degrees\": 6|\"degrees\": 60|The slope of ramp the end ramp of Halt siding (degrees) of 60.0 must be from 0.0 to"
                        + " 45.0."
            })
    void wrongNamesAndFiguresAreRefusedInOneSentence(String old, String wrong, String sentence) {
        String text = sample();
        assertThat(text).contains(old);

        assertThatThrownBy(() -> open(text.replaceFirst(Pattern.quote(old), wrong)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(sentence)
                .hasMessageContaining("journey.json, line ");
    }

    private static String withLoad(String more) {
        return sample().replace("\"car\": \"lorry-platform\" }", "\"car\": \"lorry-platform\", " + more + " }");
    }

    @Test
    void wrongPlacesAndLashingsAreRefused() {
        String stand = "\"stands\": [{\"what\": \"crate-1\", \"pose\": {\"at\": [0, 0, 0], \"yaw\": 0}}]";
        assertThatThrownBy(() -> open(withLoad(stand.replace(
                        "}}]", "}}, {\"what\": \"crate-1\", \"pose\": {\"at\": [0, 0, 0], \"yaw\": 0}}]"))))
                .hasMessageContaining("\"crate-1\" is placed twice on load \"lorry-1\". Remove one.");
        assertThatThrownBy(() -> open(withLoad(stand.replace("[0, 0, 0]", "[300000, 0, 0]"))))
                .hasMessageContaining(
                        "\"crate-1\" lies more than 200 m from its car. Lengths are in millimetres: correct it.");
        String lashing = stand
                + ", \"lashings\": [{\"key\": \"A\", \"kind\": \"chain-8\", \"what\": [\"crate-1\"], \"eye\": \"ring\", \"anchor\":"
                + " \"right 1\"}]";
        assertThatThrownBy(() -> open(withLoad(lashing)))
                .hasMessageContaining("The eye of piece crate-1 \"ring\" is not known.");
        assertThatThrownBy(() -> open(withLoad(lashing.replace("right 1", "right 99"))))
                .hasMessageContaining("The anchor point of car lorry-platform \"right 99\" is not known.");
        assertThatThrownBy(() -> open(withLoad(lashing.replace("\"eye\": \"ring\", ", ""))))
                .hasMessageContaining(
                        "The lashing \"A\" must go either to an \"eye\" of a piece, or over to \"anchor2\". Give one of the two.");
        assertThatThrownBy(() -> open(
                        withLoad("\"stands\": [{\"what\": \"wagon-1\", \"pose\": {\"at\": [0, 0, 0], \"yaw\": 0}}]")))
                .hasMessageContaining(
                        "The load \"wagon-1\" cannot stand on load \"lorry-1\": its car has no outside size.");
    }

    @Test
    void aCarWithoutAnchorsIsToldAsSuch() {
        OpenedJourney opened = SampleJourney.opened();
        String text = new String(JourneyFiles.bytes(opened.journey(), opened.parts()), StandardCharsets.UTF_8);
        int car = text.indexOf("\"id\": \"lorry-platform\"");
        int from = text.indexOf("\"anchorRows\"", car);
        String bare = text.substring(0, from) + text.substring(text.indexOf("\"stops\"", from));
        String lashed = bare.replaceFirst(
                "\"car\": \"lorry-platform\"",
                "\"car\": \"lorry-platform\", \"stands\": [{\"what\": \"crate-1\", \"pose\": {\"at\": [0, 0, 0], \"yaw\": 0}}],"
                        + " \"lashings\": [{\"key\": \"A\", \"kind\": \"strap-50\", \"what\": [\"crate-1\"], \"anchor\": \"right 1\","
                        + " \"anchor2\": \"left 1\"}]");

        assertThatThrownBy(() -> open(lashed))
                .hasMessageContaining(
                        "The transit car \"lorry-platform\" has no anchor points. Take another car, or block the load.");
    }

    @Test
    void aLayoutThatCannotBeFoundIsRefusedWhereItIsNamed() {
        assertThatThrownBy(() -> JourneyFiles.read(
                        Samples.journey("road-rail-move"),
                        SampleJourney.CATALOG,
                        from -> {
                            throw new InputException(from, "There is no such file.");
                        },
                        RuleSets.builtIn()))
                .hasMessageContaining(
                        "The layout \"sample:river-post\" cannot be used: sample:river-post: There is no such file.");
    }

    @Test
    void aNewerVersionIsRefused() {
        assertThatThrownBy(() -> open(sample().replace("\"version\": 1", "\"version\": 2")))
                .hasMessageContaining("this program reads up to version 1. Use a newer release of the program.");
    }

    @Test
    void anEmptyLoadIsWrittenShort() {
        assertThat(new String(
                        JourneyFiles.bytes(
                                SampleJourney.opened().journey(),
                                SampleJourney.opened().parts()),
                        StandardCharsets.UTF_8))
                .doesNotContain("\"packed\"")
                .contains("\"lorry-1\"");
        assertThat(Load.empty("a", "A", "car").stands()).isEmpty();
    }
}
