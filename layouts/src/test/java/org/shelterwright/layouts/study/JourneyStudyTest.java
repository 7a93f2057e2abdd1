package org.shelterwright.layouts.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;

/** Studies over the cars of a journey. */
class JourneyStudyTest {
    private static SealedStudy sealed(String cars) {
        String text = """
                {"format": "shelterwright-study", "version": 1, "id": "cars", "name": "Cars", "journey": "sample:forty-crates",
                 "axes": [{"id": "cars", "settings": [{"id": "s", %s}]}], "moves": 1000}
                """.formatted(cars);
        return open(text).study();
    }

    private static StudyFiles.Opened open(String text) {
        return PostStudy.files().open(new InputFile("study.json", text.getBytes(StandardCharsets.UTF_8)), null);
    }

    private static OpenedJourney start(SealedStudy study) {
        return study.journeyStart(study.plan().run(1), PostStudy.RULE_SETS);
    }

    @Test
    void aLoadBecomesSeveralOnCarsOfAnotherTypeOnAllItsLegs() {
        SealedStudy study = sealed("""
                "cars": [{"load": "long", "car": "flat-wagon-2-axle", "count": 3}, {"load": "short", "count": 0}]""");

        OpenedJourney start = start(study);

        assertThat(start.journey().loads()).extracting(Load::id).containsExactly("long-1", "long-2", "long-3");
        assertThat(start.journey().loads()).extracting(Load::car).containsOnly("flat-wagon-2-axle");
        assertThat(start.journey().legs())
                .extracting(Leg::loads)
                .containsExactly(List.of("long-1", "long-2", "long-3"));
        assertThat(start.parts().transit().cars()).extracting(TransitCar::id).contains("flat-wagon-2-axle");
        assertThat(start.parts().transit().lashings())
                .as("what may be needed in planning")
                .isNotEmpty();
    }

    @Test
    void whatASettingDoesNotNameStaysAsInTheJourney() {
        OpenedJourney start = start(sealed("\"limits\": {\"ledger.close-share\": 0.8}"));

        assertThat(start.journey().loads()).extracting(Load::id).containsExactly("long", "short");
        assertThat(start.journey().pieces()).hasSize(40);
    }

    @Test
    void theStudyOfTheSampleIsSealedWithAllThatItsRunsNeed() {
        SealedStudy study =
                PostStudy.files().open(Samples.study("forty-crates"), null).study();

        byte[] bytes = StudyFormats.SEALED.write(study);
        SealedStudy read = StudyFiles.readSealed(new InputFile("study.json", bytes));

        assertThat(read.fingerprint()).isEqualTo(study.fingerprint());
        assertThat(read.ofJourney()).isTrue();
        assertThat(read.plan().count()).isEqualTo(14);
        for (int run = 1; run <= 14; run++) {
            assertThat(read.journeyStart(read.plan().run(run), PostStudy.RULE_SETS)
                            .journey()
                            .loads())
                    .isNotEmpty();
        }
        assertThatThrownBy(() -> read.start(read.plan().run(1))).hasMessage("Run 1 is of a journey and has no layout.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    "cars": [{"load": "lung", "count": 1}] | The load "lung" is not known. Did you mean "long"?
                    "cars": [{"load": "long", "car": "flat-wagon-3-axle", "count": 1}] | The car "flat-wagon-3-axle" is not known. Did you mean "flat-wagon-2-axle"?
                    "cars": [{"load": "long", "count": 201}] | The number of cars for the load "long", 201, must be from 0 to 200.
                    "body": "box-6000" | A setting of a study of a journey changes "cars" and "limits" alone. Leave the rest out.
                    "limits": {"mass.reserv": 1} | The limit "mass.reserv" is not known.
                    """)
    void refusesWhatThereIsNotAtItsPlace(String change, String sentence) {
        assertThatThrownBy(() -> sealed(change))
                .hasMessageMatching("(?s)study.json, line 2, column \\d+: .*")
                .hasMessageContaining(sentence);
    }

    @Test
    void aStudyOfABriefHasNoCarsAndNoneNamesBothOrNeither() {
        assertThatThrownBy(() -> PostStudy.sealed(PostStudy.text(
                        "{\"id\": \"x\", \"settings\": [{\"id\": \"s\", \"cars\": [{\"load\": \"long\", \"count\": 1}]}]}",
                        "")))
                .hasMessageContaining("A study of a brief has no cars. Name a journey instead, or leave them out.");
        String both = """
                {"format": "shelterwright-study", "version": 1, "id": "b", "name": "B", "brief": "sample:river-post",
                 "journey": "sample:forty-crates", "moves": 1}
                """;
        assertThatThrownBy(() -> open(both))
                .hasMessageContaining("A study names either a brief or a journey, as \"brief\" or \"journey\".");
        assertThatThrownBy(() -> open(both.replace("\"brief\": \"sample:river-post\",", "")
                        .replace("sample:forty-crates", "sample:forty-crate")))
                .hasMessageContaining("There is no such sample journey. Did you mean \"forty-crates\"?");
        assertThatThrownBy(() -> open(both.replace("\"brief\": \"sample:river-post\",", "")
                        .replace("sample:forty-crates", "../journey.json")))
                .hasMessageContaining("The journey of a study is the name of a file in the folder of the study");
    }
}
