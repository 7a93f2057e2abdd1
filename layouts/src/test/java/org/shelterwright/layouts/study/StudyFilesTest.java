package org.shelterwright.layouts.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class StudyFilesTest {
    private static String setting(String changes) {
        return "{\"id\": \"x\", \"settings\": [{\"id\": \"s\", " + changes + "}]}";
    }

    @Test
    void theStudyOfTheSampleCanBeRun() {
        SealedStudy study = PostStudy.sample();

        assertThat(study.plan().count()).isEqualTo(60);
        assertThat(study.plan().leftOut()).isEqualTo(12);
        for (int run = 1; run <= study.plan().count(); run++) {
            assertThat(SealedStudy.refusal(study.start(study.plan().run(run)), PostStudy.RULE_SETS))
                    .as("run %d", run)
                    .isEmpty();
        }
    }

    @Test
    void aRunInAnotherBodyKeepsTheInventoryAndLetsGoOfOpeningsThatAreNotThere() {
        SealedStudy study = PostStudy.sealed(PostStudy.text("""
                {"id": "body", "settings": [{"id": "as-it-is"}, {"id": "other", "body": "container-20",
                 "carrier": "truck-three-axle"}]}""", ""));
        Inventory asked = study.start(study.plan().run(1)).brief().listed();
        Inventory other = study.start(study.plan().run(2)).brief().listed();

        assertThat(asked.pieces()).hasSizeGreaterThan(10);
        assertThat(other.pieces()).isEqualTo(asked.pieces());
        assertThat(asked.task("rescue").orElseThrow().opening()).isEqualTo("front emergency door");
        assertThat(other.task("rescue").orElseThrow()).satisfies(task -> {
            assertThat(task.opening()).isNull();
            assertThat(task.name()).isEqualTo("Rescue from the water");
        });
        assertThat(other.task("gauging")).isEqualTo(asked.task("gauging"));
        assertThat(other.task("watch")).isEqualTo(asked.task("watch"));
    }

    @Test
    void aSealedStudyHoldsAllThatItsRunsNeed() {
        SealedStudy study = PostStudy.sample();

        SealedStudy read = StudyFiles.readSealed(new InputFile("study.json", StudyFormats.SEALED.write(study)));

        assertThat(read).isEqualTo(study);
        assertThat(read.fingerprint()).isEqualTo(study.fingerprint());
        assertThat(read.bodies()).extracting("id").containsExactly("box-4200", "box-6000", "container-20");
        assertThat(read.items()).extracting("id").contains("cooler-roof", "cooler-wall", "generator-8kva");
        for (int run = 1; run <= read.plan().count(); run++) {
            assertThat(read.start(read.plan().run(run)))
                    .isEqualTo(study.start(study.plan().run(run)));
        }
    }

    @Test
    void theFingerprintTellsStudiesBriefsAndProgramsApart() {
        SealedStudy study = PostStudy.sample();
        SealedStudy later = new StudyFiles(PostStudy.CATALOG, PostStudy.RULE_SETS, "1.1")
                .open(Samples.study("river-post"), null)
                .study();
        SealedStudy crewed = new SealedStudy(
                study.program(),
                study.study(),
                study.brief().withCrew(2),
                study.bodies(),
                study.carriers(),
                study.items(),
                study.cables(),
                study.pieces());

        assertThat(List.of(study.fingerprint(), later.fingerprint(), crewed.fingerprint()))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"body\": \"box-4201\" | The body \"box-4201\" is not known. Did you mean \"box-4200\"?",
                "\"carrier\": \"truck-two-axl\" | The carrier \"truck-two-axl\" is not known. Did you mean"
                        + " \"truck-two-axle\"?",
                "\"swaps\": [{\"unit\": \"heatr\", \"item\": \"heater-air\"}] | The unit \"heatr\" is not known. Did you"
                        + " mean \"heater\"?",
                "\"swaps\": [{\"unit\": \"heater\", \"item\": \"heater-ai\"}] | The item \"heater-ai\" is not known. Did"
                        + " you mean \"heater-air\"?",
                "\"quantities\": [{\"unit\": \"rack-7\", \"count\": 2}] | The unit \"rack-7\" is not known. Did you mean"
                        + " \"rack-1\"?",
                "\"items\": [{\"item\": \"battery-box\", \"deeper\": 40}] | The item \"battery-box\" is not known. Did you"
                        + " mean \"battery-box-24v\"?",
                "\"items\": [{\"item\": \"battery-box-24v\", \"deeper\": -60}] | The item \"battery-box-24v\" cannot come"
                        + " 60 mm smaller along its depth of 700 mm: something in it lies where it would end. Give a"
                        + " catalog entry of its own.",
                "\"items\": [{\"item\": \"battery-box-24v\", \"heavierKg\": -200}] | The item \"battery-box-24v\" of 154.0"
                        + " kg cannot become 200.0 kg lighter.",
                "\"limits\": {\"mass.reserve-shar\": 0.1} | The limit \"mass.reserve-shar\" is not known. Did you mean"
                        + " \"mass.reserve-share\"?",
                "\"ruleSets\": [\"road-eux\"] | The rule set \"road-eux\" is not known. Did you mean \"road-eu\"?",
            })
    void refusesWhatThereIsNotAtItsPlace(String changes, String sentence) {
        assertThatThrownBy(() -> PostStudy.open(PostStudy.text(setting(changes), ""), null))
                .isInstanceOf(InputException.class)
                .hasMessageEndingWith(": " + sentence)
                .hasMessageMatching("study.json, line 2, column \\d+: .*");
    }

    @Test
    void refusesAxesThatMakeNoSense() {
        assertThatThrownBy(() -> PostStudy.open(PostStudy.text("{\"id\": \"x\"}", ""), null))
                .hasMessageEndingWith("The axis \"x\" has no settings. Give at least one, or remove the axis.");
        assertThatThrownBy(() ->
                        PostStudy.open(PostStudy.text(setting("\"crew\": 1") + "," + setting("\"crew\": 2"), ""), null))
                .hasMessageContaining("The axis \"x\" is given twice. Rename one of them.")
                .hasMessageContaining(
                        "The axes \"x\" and \"x\" both change the crew. Put these settings into one axis.");
        assertThatThrownBy(() -> PostStudy.open(
                        PostStudy.text("{\"id\": \"x\", \"settings\": [{\"id\": \"s\"}, {\"id\": \"s\"}]}", ""), null))
                .hasMessageEndingWith("The setting \"s\" of the axis \"x\" is given twice. Rename one of them.");
        assertThatThrownBy(() -> PostStudy.open(
                        PostStudy.text("{\"id\": \"x\", \"settings\": [{\"id\": \"s\"}, {\"id\": \"t\"}]}", ""), null))
                .hasMessageEndingWith(
                        "The axis \"x\" changes nothing, so its settings would all give the same. Name in one of"
                                + " them what it changes, or remove the axis.");
        assertThatThrownBy(() -> PostStudy.open(
                        PostStudy.text(setting("\"crew\": 1"), "\"leaveOut\": [{\"when\": {\"y\": [\"s\"]}}]"), null))
                .hasMessageEndingWith("The axis \"y\" is not known. Did you mean \"x\"?");
        assertThatThrownBy(() -> PostStudy.open(
                        PostStudy.text(setting("\"crew\": 1"), "\"leaveOut\": [{\"when\": {\"x\": [\"big\"]}}]"), null))
                .hasMessageEndingWith("The setting \"big\" is not known. Known are: s.");
    }

    @Test
    void refusesFiguresOutOfRange() {
        assertThatThrownBy(() -> PostStudy.open(PostStudy.text(setting("\"crew\": -1"), ""), null))
                .hasMessageEndingWith("The crew of -1 must be from 0 to 100.");
        assertThatThrownBy(() -> PostStudy.open(
                        PostStudy.text(setting("\"quantities\": [{\"unit\": \"desk\", \"count\": 501}]"), ""), null))
                .hasMessageEndingWith("The number of units like \"desk\", 501, must be from 0 to 500.");
        assertThatThrownBy(() -> PostStudy.open(PostStudy.text("", "").replace("1000", "0"), null))
                .hasMessageEndingWith("The moves of a run, 0, must be from 1 to 1000000000000.");
        assertThatThrownBy(() -> PostStudy.open(PostStudy.text("", "\"seeds\": {\"first\": 1, \"count\": 0}"), null))
                .hasMessageEndingWith("The number of seeds, 0, must be at least 1.");
        assertThatThrownBy(() ->
                        PostStudy.open(PostStudy.text("", "\"seeds\": {\"first\": 1, \"count\": 1000000000}"), null))
                .hasMessageEndingWith(
                        "The study asks for 1000000000 runs; at most 100000 are taken. Take fewer settings"
                                + " or seeds, leave more out, or split it.");
    }

    @Test
    void takesTheBriefFromTheFolderOfTheStudyAndFromNowhereElse(@TempDir Path folder) throws IOException {
        Files.write(folder.resolve("own.json"), Samples.brief("river-post").bytes());
        String text = PostStudy.text("", "").replace("sample:river-post", "own.json");

        assertThat(PostStudy.open(text, folder).study().brief().id()).isEqualTo("river-post");
        for (String other : List.of("../own.json", "/etc/passwd", "..", "a/b.json")) {
            assertThatThrownBy(() -> PostStudy.open(text.replace("own.json", other), folder))
                    .isInstanceOf(InputException.class)
                    .hasMessageEndingWith("The brief of a study is the name of a file in the folder of the study, or a"
                            + " sample such as \"sample:river-post\", but is \"" + other + "\".");
        }
        assertThatThrownBy(() -> PostStudy.open(text.replace("own.json", "none.json"), folder))
                .hasMessageEndingWith("There is no such file. Check its name and folder.");
    }

    @Test
    void refusesASealedStudyThatWasTamperedWith() {
        String text = new String(StudyFormats.SEALED.write(PostStudy.sample()), StandardCharsets.UTF_8);
        String wide = text.replace("\"first\": 1, \"count\": 3}", "\"first\": 1, \"count\": 300000}");

        assertThatThrownBy(
                        () -> StudyFiles.readSealed(new InputFile("study.json", wide.getBytes(StandardCharsets.UTF_8))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("The study asks for 6000000 runs; at most 100000 are taken.");
    }

    @Test
    void aUnitThatIsNotAskedForTakesWhatWasToBeWithinItAlong() {
        SealedStudy study = PostStudy.sealed(PostStudy.text(
                "{\"id\": \"racks\", \"settings\": [{\"id\": \"one\", \"quantities\": [{\"unit\": \"rack-2\", \"count\": 0}]}]}",
                ""));

        Layout start = study.start(study.plan().run(1));

        assertThat(SealedStudy.refusal(start, PostStudy.RULE_SETS)).isEmpty();
        assertThat(start.brief().listed().pieces()).isNotEmpty().noneMatch(piece -> "rack-2".equals(piece.within()));
    }
}
