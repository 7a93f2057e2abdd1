package org.shelterwright.app.desk.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.shelterwright.app.desk.file.FiledSample.CHECKER;
import static org.shelterwright.app.desk.file.FiledSample.INPUTS;
import static org.shelterwright.app.desk.file.FiledSample.LAYOUT;
import static org.shelterwright.app.desk.file.FiledSample.UNIT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.edit.TurnUnit;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

class FilingTest {
    @TempDir
    Path folder;

    private final WorkAtOnce work = new WorkAtOnce();
    private final List<String> told = new ArrayList<>();
    private final List<Filing<Layout>> open = new ArrayList<>();
    private Path file;
    private Path unsaved;
    private Session session;
    private Filing<Layout> filing;

    @BeforeEach
    void openOne() {
        file = folder.resolve("post.layout.json");
        unsaved = folder.resolve("post.layout.unsaved.json");
        LayoutFiles.write(LAYOUT, file, Fingerprint.NONE);
        filing = open(file.toString());
    }

    @AfterEach
    void close() {
        open.forEach(Filing::close);
    }

    @Test
    void savedFileHoldsWhatIsOnTheDeskAndKeepsWhatWasThere() {
        turn();
        assertThat(filing.changesSinceSave()).isEqualTo(1);

        filing.save(false, () -> told.add("saved"), told::add);

        assertThat(told).containsExactly("saved");
        assertThat(filing.changesSinceSave()).isZero();
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(session.now().layout());
        assertThat(LayoutFiles.read(folder.resolve("post.layout.previous.json")).layout())
                .isEqualTo(LAYOUT);
        assertThat(session.now().history().canUndo()).as("undo is still there").isTrue();
    }

    @Test
    void everyChangeIsKeptBesideTheFileAtOnceUntilItIsSaved() {
        turn();
        assertThat(LayoutFiles.read(unsaved).layout()).isEqualTo(session.now().layout());
        session.apply(new TakeOutUnit(UNIT));
        assertThat(LayoutFiles.read(unsaved).layout()).isEqualTo(session.now().layout());

        filing.save(false, () -> {}, told::add);

        assertThat(unsaved).doesNotExist();
        assertThat(told).isEmpty();
    }

    @Test
    void undoingBackToTheFileLeavesNothingUnsaved() {
        turn();
        session.undo();

        assertThat(unsaved).doesNotExist();
        assertThat(filing.changesSinceSave()).isZero();
    }

    @Test
    void whatIsTriedOutIsNotKept() {
        session.tryOut(new TakeOutUnit(UNIT));

        assertThat(unsaved).doesNotExist();
    }

    @Test
    void aChangeMadeWhileAnotherIsBeingKeptIsKeptAfterIt() {
        work.hold();
        turn();
        session.apply(new TakeOutUnit(UNIT));
        work.letGo();

        assertThat(LayoutFiles.read(unsaved).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void aChangeMadeWhileSavingStaysUnsaved() {
        turn();
        Layout first = session.now().layout();
        work.hold();
        filing.save(false, () -> {}, told::add);
        session.apply(new TakeOutUnit(UNIT));
        work.letGo();

        assertThat(LayoutFiles.read(file).layout()).isEqualTo(first);
        assertThat(filing.changesSinceSave()).isEqualTo(1);
        assertThat(LayoutFiles.read(unsaved).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void afterACrashUnsavedWorkIsOfferedWithTimeAndDifferences() throws IOException {
        Layout changed = new TurnUnit(UNIT, QuarterTurn.R90).apply(LAYOUT);
        filing.close();
        Files.write(unsaved, LayoutFiles.bytes(changed));
        Files.setLastModifiedTime(
                unsaved, java.nio.file.attribute.FileTime.from(Instant.parse("2026-03-01T14:02:00Z")));

        Filing<Layout> again = open(file.toString());

        Recovery found = again.recovery().orElseThrow();
        assertThat(found.differences())
                .isEqualTo(Differences.count(LAYOUT, changed))
                .isPositive();
        assertThat(found.sentence(ZoneOffset.UTC, LocalDate.of(2026, 3, 1)))
                .isEqualTo(
                        "The window was not closed properly. Unsaved work was kept (today, 14:02). It differs from the"
                                + " file in " + found.differences()
                                + (found.differences() == 1 ? " thing." : " things."));
        assertThat(found.sentence(ZoneOffset.UTC, LocalDate.of(2026, 3, 2))).contains("(2026-03-01, 14:02)");
        again.takeRecovery();
        assertThat(session.now().layout()).isEqualTo(changed);
        assertThat(session.now().history().undoNames()).containsExactly("Take unsaved work");
        assertThat(again.recovery()).isEmpty();
    }

    @Test
    void unsavedWorkThatIsLetGoIsGone() throws IOException {
        filing.close();
        Files.write(unsaved, LayoutFiles.bytes(new TakeOutUnit(UNIT).apply(LAYOUT)));
        Filing<Layout> again = open(file.toString());

        again.dropRecovery();

        assertThat(unsaved).doesNotExist();
        assertThat(session.now().layout()).isEqualTo(LAYOUT);
    }

    @Test
    void unsavedWorkThatWasNotAnsweredForIsOfferedAgain() throws IOException {
        filing.close();
        Files.write(unsaved, LayoutFiles.bytes(new TakeOutUnit(UNIT).apply(LAYOUT)));
        open(file.toString()).close();

        assertThat(open(file.toString()).recovery()).isPresent();
    }

    @Test
    void closingProperlyLeavesNothingBeside() throws IOException {
        turn();

        filing.close();

        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void aSecondWindowMayLookButNotSave() {
        Filing<Layout> second = open(file.toString());

        assertThat(second.state().get().readOnly())
                .startsWith("post.layout.json is open in another window (")
                .endsWith("). Here it can be looked at, and saved under another name.");
        turn();
        second.save(false, () -> told.add("saved"), told::add);
        assertThat(told).containsExactly(second.state().get().readOnly());
        assertThat(unsaved)
                .as("unsaved work of the first window is not touched")
                .doesNotExist();

        Path other = folder.resolve("other.json");
        second.saveAs(other, () -> told.add("saved"), told::add);
        assertThat(second.state().get().readOnly()).isNull();
        assertThat(LayoutFiles.read(other).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void aWindowDoesNotSaveOverTheFileOfAnother() {
        Path other = folder.resolve("other.json");
        LayoutFiles.write(LAYOUT, other, Fingerprint.NONE);
        open(other.toString());

        filing.saveAs(other, () -> told.add("saved"), told::add);

        assertThat(told).hasSize(1);
        assertThat(told.get(0)).startsWith("other.json is open in another window (");
    }

    @Test
    void savingUnderTheSameNameSpelledOtherwiseIsNotTheFileOfAnotherWindow() {
        turn();

        filing.saveAs(folder.resolve("./post.layout.json"), () -> told.add("saved"), told::add);

        assertThat(told).containsExactly("saved");
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void whyUnsavedWorkIsNotKeptIsSaidUntilItIsKeptAgain() throws IOException {
        Path inTheWay = Files.createDirectories(unsaved.resolve("full"));
        assertThat(filing.unkept().get()).isEmpty();

        turn();

        assertThat(filing.unkept().get()).startsWith("The file could not be saved (");
        Files.delete(inTheWay);
        Files.delete(unsaved);
        session.apply(new TakeOutUnit(UNIT));
        assertThat(filing.unkept().get()).isEmpty();
        assertThat(LayoutFiles.read(unsaved).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void whereNothingCanBeWrittenBesideTheFileUnsavedWorkIsKeptInTheFolderOfTheUser() {
        Path standIns = folder.resolve("user/unsaved");
        Path away = folder.resolve("away/post.json");

        try (Home<Layout> home =
                Home.of(away, standIns, new FiledLayout(session)).orElseThrow()) {
            home.unsaved().keep(LAYOUT);
            assertThat(home.readOnly(away))
                    .isEqualTo("post.json may not be written to. It can be saved under another name.");
            assertThat(home.place().getParent()).isEqualTo(standIns);
            assertThat(home.place().getFileName().toString()).matches("[0-9a-f]{8}-post.json");
        }

        try (Home<Layout> again =
                Home.of(away, standIns, new FiledLayout(session)).orElseThrow()) {
            assertThat(again.found().orElseThrow().content()).isEqualTo(LAYOUT);
        }
    }

    @Test
    void aChangeByAnotherIsNoticedAndNeverWrittenOverUnasked() throws IOException {
        turn();
        Files.write(file, LayoutFiles.bytes(new TakeOutUnit(UNIT).apply(LAYOUT)));

        filing.look();
        assertThat(filing.changedOnDisk().get()).isTrue();

        filing.save(false, () -> told.add("saved"), told::add);
        assertThat(told)
                .containsExactly(
                        "The file was changed by another since it was read. Save under another name, or read it again.");
        assertThat(filing.changesSinceSave()).isEqualTo(1);
        assertThat(unsaved).exists();

        filing.save(true, () -> told.add("saved"), told::add);
        assertThat(told).last().isEqualTo("saved");
        assertThat(filing.changedOnDisk().get()).isFalse();
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void aChangeThatIsIgnoredIsNotToldAgainButStillNotWrittenOver() throws IOException {
        Files.writeString(file, "{}");
        filing.look();

        filing.ignoreChange();
        filing.look();

        assertThat(filing.changedOnDisk().get()).isFalse();
        turn();
        filing.save(false, () -> told.add("saved"), told::add);
        assertThat(told).hasSize(1).doesNotContain("saved");
        Files.writeString(file, "{ }");
        filing.look();
        assertThat(filing.changedOnDisk().get()).as("a further change is told").isTrue();
    }

    @Test
    void aSampleHasNoFileButItsUnsavedWorkIsKept() {
        Filing<Layout> sample = open("sample:river-post");
        assertThat(sample.state().get().file()).isEmpty();
        turn();
        Path kept = folder.resolve("user/unsaved/river-post.unsaved.json");
        assertThat(kept).exists();

        Path named = folder.resolve("named.json");
        sample.saveAs(named, () -> told.add("saved"), told::add);

        assertThat(told).containsExactly("saved");
        assertThat(kept).doesNotExist();
        assertThat(sample.state().get().file()).contains(named);
    }

    @Test
    void unsavedWorkOnASampleIsToldOfWhateverIsOpenedNext() {
        Path user = folder.resolve("user");
        Filing<Layout> sample = open("sample:river-post");
        turn();
        assertThat(Leftovers.in(user, List.of("river-post", "water-lab")))
                .as("a window works on it")
                .isEmpty();
        Home<Layout> killed = Home.without(user.resolve("unsaved"), "water-lab", new FiledLayout(session));
        killed.unsaved().keep(LAYOUT);
        killed.close();

        List<Leftovers.Left> left = Leftovers.in(user, List.of("river-post", "water-lab"));

        assertThat(left).extracting(Leftovers.Left::sample).containsExactly("water-lab");
        Leftovers.Left one = new Leftovers.Left("water-lab", Instant.parse("2026-03-01T14:02:00Z"));
        assertThat(one.sentence("Water Lab", ZoneOffset.UTC, LocalDate.of(2026, 3, 1)))
                .isEqualTo("Unsaved work on Water Lab, which has no file yet, was kept (today, 14:02).");
        assertThat(sample.changesSinceSave()).isEqualTo(1);
    }

    @Test
    void withoutAFileSavingAsksForAName() {
        Filing<Layout> sample = open("sample:river-post");

        sample.save(false, () -> told.add("saved"), told::add);

        assertThat(told).containsExactly("The layout has no file yet. Save it under a name.");
    }

    @Test
    void openingAnotherLayoutLetsGoOfTheFirst() {
        Opened water = INPUTS.toJudge("sample:water-lab");

        filing.open(OpenedFile.of(water));

        assertThat(session.now().layout()).isEqualTo(water.layout());
        assertThat(filing.state().get().file()).isEmpty();
        assertThat(filing.changesSinceSave()).isZero();
        assertThat(open(file.toString()).state().get().readOnly()).isNull();
    }

    @Test
    void newerVersionIsRefusedWithASentence() throws IOException {
        Files.writeString(file, Files.readString(file).replace("\"version\": 1", "\"version\": 99"));

        assertThatThrownBy(() -> INPUTS.toJudge(file.toString()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("99");
    }

    @Test
    void differencesCountUnitsPlacesAcceptancesAndTheBrief() {
        Layout without = new TakeOutUnit(UNIT).apply(LAYOUT);

        assertThat(Differences.count(LAYOUT, LAYOUT)).isZero();
        assertThat(Differences.count(LAYOUT, without))
                .isEqualTo(LAYOUT.placements().size() - without.placements().size());
        assertThat(Differences.count(without, LAYOUT)).isEqualTo(Differences.count(LAYOUT, without));
    }

    private Filing<Layout> open(String name) {
        Opened opened = INPUTS.toJudge(name);
        session = new Session(CHECKER, opened.layout());
        Filing<Layout> made = new Filing<>(
                new FiledLayout(session), OpenedFile.of(opened), work, Clock.systemUTC(), folder.resolve("user"));
        open.add(made);
        return made;
    }

    private void turn() {
        assertThat(Set.copyOf(session.now().layout().placements().keySet())).contains(UNIT);
        session.apply(new TurnUnit(UNIT, QuarterTurn.R90));
    }
}
