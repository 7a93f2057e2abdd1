package org.shelterwright.app.desk.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.cli.workshop.Journeys;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.app.desk.file.Filing;
import org.shelterwright.app.desk.file.OpenedFile;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.transport.edit.TakeOff;

class FiledJourneyTest {
    @TempDir
    Path folder;

    private final WorkAtOnce work = new WorkAtOnce();

    private OpenedJourney read(Path file) {
        return new Journeys(() -> JourneyPost.CATALOG, JourneyPost.CHECKER.ruleSets()).open(file.toString());
    }

    private JourneyWork content(Path file) {
        OpenedJourney opened = read(file);
        return new JourneyWork(opened.journey(), opened.parts());
    }

    private Filing<JourneyWork> filing(JourneySession session, OpenedFile<JourneyWork> opened) {
        return new Filing<>(
                new FiledJourney(session, this::content), opened, work, Clock.systemUTC(), folder.resolve("user"));
    }

    @Test
    void aJourneyIsSavedAndOpensAgainWithTheSameLedger() {
        JourneySession session = JourneyPost.session();
        Path file = folder.resolve("move.journey.json");
        try (Filing<JourneyWork> filing =
                filing(session, new OpenedFile<>("sample:x", JourneyPost.loaded(), Fingerprint.NONE))) {
            session.apply(new TakeOff("wagon-1", "crate-2"));
            assertThat(filing.changesSinceSave()).isEqualTo(1);
            filing.saveAs(file, () -> {}, sentence -> fail(sentence));
            assertThat(filing.changesSinceSave()).isZero();
        }

        JourneySession again = new JourneySession(JourneyPost.CHECKER);
        again.open(content(file));
        assertThat(again.now().orElseThrow().ledger())
                .isEqualTo(session.now().orElseThrow().ledger());
        assertThat(read(file).doubts()).isEmpty();
    }

    @Test
    void unsavedWorkIsKeptBesideTheFileAndOffered() {
        JourneySession session = JourneyPost.session();
        Path file = folder.resolve("move.journey.json");
        Filing<JourneyWork> filing =
                filing(session, new OpenedFile<>("sample:x", JourneyPost.loaded(), Fingerprint.NONE));
        filing.saveAs(file, () -> {}, sentence -> fail(sentence));
        session.apply(new TakeOff("wagon-1", "crate-2"));
        Path unsaved = folder.resolve("move.journey.unsaved.json");
        assertThat(unsaved).exists();
        byte[] kept = bytes(unsaved);
        filing.close();
        write(unsaved, kept);

        JourneySession again = new JourneySession(JourneyPost.CHECKER);
        JourneyWork content = content(file);
        again.open(content);
        try (Filing<JourneyWork> second = filing(
                again, new OpenedFile<>(file.toString(), content, read(file).fingerprint()))) {
            assertThat(second.recovery()).isPresent();
            assertThat(second.recovery().orElseThrow().differences()).isEqualTo(1);
            second.takeRecovery();
            assertThat(again.now().orElseThrow().journey())
                    .isEqualTo(session.now().orElseThrow().journey());
            assertThat(again.now().orElseThrow().history().undoNames()).containsExactly("Take unsaved work");
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
    }
}
