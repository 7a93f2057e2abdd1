package org.shelterwright.layouts.study.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.study.PostStudy;
import org.shelterwright.layouts.study.SealedStudy;

class ResultsFileTest {
    private static final SealedStudy STUDY = PostStudy.sealed(PostStudy.text(
            "{\"id\": \"crew\", \"settings\": [{\"id\": \"two\", \"crew\": 2}, {\"id\": \"three\"}]}",
            "\"seeds\": {\"first\": 1, \"count\": 3}"));
    private static final SealedStudy OTHER = PostStudy.sealed(PostStudy.text("", ""));

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("results.jsonl");
    }

    private static RunResult run(int number) {
        return Runs.of(STUDY, number, 0.8, 4000 + number);
    }

    private List<RunResult> read() {
        List<RunResult> read = new ArrayList<>();
        ResultsFile.read(file(), STUDY, read::add);
        return read;
    }

    private void fill(int... numbers) {
        try (ResultsFile results = ResultsFile.open(file(), STUDY)) {
            for (int number : numbers) {
                assertThat(results.add(run(number))).isTrue();
            }
        }
    }

    @Test
    void keepsResultsInTheOrderInWhichTheyCome() {
        fill(3, 1);
        fill(6);

        assertThat(read()).containsExactly(run(3), run(1), run(6));
        try (ResultsFile results = ResultsFile.open(file(), STUDY)) {
            assertThat(results.count()).isEqualTo(3);
            assertThat(results.holds(3)).isTrue();
            assertThat(results.holds(2)).isFalse();
        }
    }

    @Test
    void takesOneResultOfEachRun() throws IOException {
        fill(2);
        byte[] before = Files.readAllBytes(file());

        try (ResultsFile results = ResultsFile.open(file(), STUDY)) {
            assertThat(results.add(run(2))).isFalse();
        }

        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Test
    void aLastLineThatWasCutOffAnywhereIsTakenAwayAndItsRunCanBeDoneAgain() throws IOException {
        fill(1, 2);
        byte[] whole = Files.readAllBytes(file());
        fill(3);
        byte[] longer = Files.readAllBytes(file());
        for (int length = 0; length < longer.length; length += length < whole.length ? 131 : 53) {
            Files.write(file(), Arrays.copyOf(longer, length));
            try (ResultsFile results = ResultsFile.open(file(), STUDY)) {
                for (int run = 1; run <= 3; run++) {
                    boolean there = results.holds(run);
                    assertThat(results.add(run(run))).isEqualTo(!there);
                }
                assertThat(results.count()).as("cut at %d", length).isEqualTo(3);
            }
            assertThat(Files.readAllBytes(file())).as("cut at %d", length).isEqualTo(longer);
        }
    }

    @Test
    void aFullDiskLosesNothingThatWasThere() {
        try (ResultsFile results = ResultsFile.open(file(), STUDY, ResultsFileTest::fullAfterTwo)) {
            results.add(run(1));
            assertThatThrownBy(() -> results.add(run(2)))
                    .isInstanceOf(InputException.class)
                    .hasMessage(
                            file() + ": The disk is full: the result of run 2 could not be kept; those before it are"
                                    + " safe. Make room and start again: the study goes on where it ended.");
        }
        assertThat(read()).containsExactly(run(1));
        fill(2, 3);
        assertThat(read()).containsExactly(run(1), run(2), run(3));
    }

    private static void fullAfterTwo(FileChannel channel, ByteBuffer bytes) throws IOException {
        String text = StandardCharsets.UTF_8.decode(bytes.duplicate()).toString();
        if (text.contains("\"run\":2,")) {
            bytes.limit(100);
            channel.write(bytes);
            throw new IOException("No space left on device");
        }
        channel.write(bytes);
    }

    @Test
    void aDiskThatFailsIsToldAsItIs() {
        try (ResultsFile results = ResultsFile.open(file(), STUDY, (channel, bytes) -> {
            if (channel.position() > 0) {
                throw new IOException("Input/output error");
            }
            channel.write(bytes);
        })) {
            assertThatThrownBy(() -> results.add(run(1)))
                    .hasMessage(file() + ": Writing failed (Input/output error): the result of run 1 could not be kept;"
                            + " those before it are safe. Start again: the study goes on where it ended.");
        }
    }

    @Test
    void onlyOneAddsAtATime() {
        try (ResultsFile results = ResultsFile.open(file(), STUDY)) {
            assertThatThrownBy(() -> ResultsFile.open(file(), STUDY))
                    .isInstanceOf(InputException.class)
                    .hasMessage(
                            file() + ": Another run of this study is adding its results. Wait for it to end, or stop"
                                    + " it.");
            results.add(run(1));
        }
    }

    @Test
    void resultsOfAnotherStudyAreRefusedAndLeftAsTheyAre() throws IOException {
        fill(1);
        byte[] before = Files.readAllBytes(file());

        assertThatThrownBy(() -> ResultsFile.open(file(), OTHER))
                .hasMessage(
                        file() + ": These are results of the study \"trial\" as it was otherwise. They are left as they"
                                + " are: name another folder.");
        assertThatThrownBy(() -> ResultsFile.open(file(), PostStudy.sample()))
                .hasMessage(
                        file() + ": These are results of the study \"trial\", not of \"river-post-bodies\". They are"
                                + " left as they are: name another folder.");
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Test
    void aWrongLineIsToldWithItsNumber() throws IOException {
        fill(1, 2);
        String text = Files.readString(file());

        refuses(
                text.replace("\"run\":2,", "\"run\":1,"),
                "line 3: This is of run 1 with other settings or another seed");
        refuses(
                text + text.lines().skip(1).findFirst().orElseThrow() + "\n",
                "line 4: Run 1 is there twice, first in line 2. Remove one of the lines.");
        refuses(text.replace("\"run\":2,", "\"run\":7,"), "line 3: This is of run 7, but the study has 6 runs.");
        refuses(
                text.replace("\"run\":1,", "\"rum\":1,"),
                "line 2: The key \"rum\" is not known in the file. Did you mean \"run\"? Remove the line, and its run is"
                        + " done again.");
        refuses(text + "\n", "line 4: ");
    }

    private void refuses(String text, String sentence) throws IOException {
        Files.writeString(file(), text);
        assertThatThrownBy(() -> ResultsFile.open(file(), STUDY))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(file() + ", " + sentence);
    }

    @Test
    void theFolderOfAnotherStudyIsRefused() throws IOException {
        StudyFolder.prepare(folder, STUDY);

        assertThat(StudyFolder.prepare(folder, STUDY).study()).isEqualTo(STUDY);
        assertThatThrownBy(() -> StudyFolder.prepare(folder, PostStudy.sample()))
                .hasMessageEndingWith(
                        "The folder holds the study \"trial\", not \"river-post-bodies\". Name another folder.");
        assertThatThrownBy(() -> StudyFolder.prepare(folder, OTHER))
                .hasMessageEndingWith("The study has changed since it was begun here, and results of both would not fit"
                        + " together. Name another folder.");
        SealedStudy newer = new SealedStudy(
                "2.0",
                STUDY.study(),
                STUDY.brief(),
                STUDY.bodies(),
                STUDY.carriers(),
                STUDY.items(),
                STUDY.cables(),
                STUDY.pieces());
        assertThatThrownBy(() -> StudyFolder.prepare(folder, newer))
                .hasMessageEndingWith(
                        "The study was begun by version 1.0 of the program; this is 2.0, whose results may"
                                + " differ. Name another folder, or go on with that version.");
        SealedStudy crewed = new SealedStudy(
                "1.0",
                STUDY.study(),
                STUDY.brief().withCrew(1),
                STUDY.bodies(),
                STUDY.carriers(),
                STUDY.items(),
                STUDY.cables(),
                STUDY.pieces());
        assertThatThrownBy(() -> StudyFolder.prepare(folder, crewed))
                .hasMessageContaining("The brief of the study has changed since it was begun here");
        assertThatThrownBy(() -> StudyFolder.open(Files.createDirectory(folder.resolve("none"))))
                .hasMessageEndingWith("No study was run into this folder: it holds no file study.json.");
    }

    @Test
    void aRunWithoutLayoutIsToldSo() {
        StudyFolder prepared = StudyFolder.prepare(folder, STUDY);
        try (ResultsFile results = prepared.results()) {
            results.add(run(1));
            results.add(RunResult.refused(
                    2, STUDY.plan().run(2).ids(), STUDY.plan().run(2).seed(), "Too large."));
        }

        assertThatThrownBy(() -> prepared.layout(3)).hasMessageEndingWith("There is no result of run 3 yet.");
        assertThatThrownBy(() -> prepared.layout(2)).hasMessageEndingWith("Run 2 has no layout: Too large.");
        assertThatThrownBy(() -> prepared.layout(1))
                .hasMessageEndingWith(
                        "The places of run 1 were not kept. Fit it again with the seed 1 and 1000 moves, or"
                                + " keep them in the study.");
        assertThat(prepared.table()).extracting(RunResult::run).containsExactly(1, 2);
    }

    @Test
    void aFileThatCannotBeOpenedIsToldInASentence() throws IOException {
        Files.createDirectory(file());

        assertThatThrownBy(() -> ResultsFile.open(file(), STUDY))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("The file of results cannot be written");
    }
}
