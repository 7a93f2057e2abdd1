package org.shelterwright.app.desk.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.shelterwright.app.desk.file.FiledSample.CHECKER;
import static org.shelterwright.app.desk.file.FiledSample.INPUTS;
import static org.shelterwright.app.desk.file.FiledSample.LAYOUT;
import static org.shelterwright.app.desk.file.FiledSample.UNIT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.app.desk.ask.Notes;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

class FilingNotesTest {
    @TempDir
    Path folder;

    private final Shown notes = new Shown();
    private final List<String> done = new ArrayList<>();
    private final ScriptedQuestions questions = new ScriptedQuestions();
    private Path file;
    private Session session;
    private Filing<Layout> filing;
    private FilingTalk<Layout> talk;

    /** Remembers what is shown, and answers. */
    private static final class Shown implements Notes {
        private final Map<String, String> sentences = new LinkedHashMap<>();
        private final Map<String, Map<String, Runnable>> answers = new LinkedHashMap<>();

        @Override
        public void show(String key, String sentence, Map<String, Runnable> orders) {
            sentences.put(key, sentence);
            answers.put(key, orders);
        }

        @Override
        public void hide(String key) {
            sentences.remove(key);
            answers.remove(key);
        }

        void answer(String key, String order) {
            answers.get(key).get(order).run();
        }
    }

    @BeforeEach
    void open() {
        file = folder.resolve("post.layout.json");
        LayoutFiles.write(LAYOUT, file, Fingerprint.NONE);
        Opened opened = INPUTS.toJudge(file.toString());
        session = new Session(CHECKER, opened.layout());
        filing = new Filing<>(
                new FiledLayout(session),
                OpenedFile.of(opened),
                new WorkAtOnce(),
                Clock.systemUTC(),
                folder.resolve("user"));
        talk = new FilingTalk<>(
                filing,
                questions,
                new FilingTalk.Subject(() -> "River Post", () -> "river-post.layout.json", "Save under a name"),
                path -> done.add("saved " + path.getFileName()));
        new FilingNotes(filing, "layout", notes, () -> done.add("read again"), talk::saveOver).start();
    }

    @AfterEach
    void close() {
        filing.close();
    }

    @Test
    void aChangeByAnotherCanBeReadOrLetBe() throws IOException {
        assertThat(notes.sentences).isEmpty();
        Files.write(file, LayoutFiles.bytes(new TakeOutUnit(UNIT).apply(LAYOUT)));

        filing.look();

        assertThat(notes.sentences)
                .containsOnly(Map.entry("layout-disk", "post.layout.json was changed by another since it was read."));
        notes.answer("layout-disk", "Read it again");
        assertThat(done).containsExactly("read again");
        notes.answer("layout-disk", "Stay with what is here");
        assertThat(notes.sentences).isEmpty();
    }

    @Test
    void aFileThatWentAwayCanBeSavedAgain() throws IOException {
        Files.delete(file);

        filing.look();

        assertThat(notes.sentences)
                .containsOnly(Map.entry("layout-disk", "post.layout.json was removed by another since it was read."));
        notes.answer("layout-disk", "Save it again");
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(LAYOUT);
        assertThat(done).containsExactly("saved post.layout.json");
        assertThat(notes.sentences).isEmpty();
    }

    @Test
    void whatIsToldFollowsTheFile() throws IOException {
        byte[] start = Files.readAllBytes(file);
        Files.write(file, LayoutFiles.bytes(new TakeOutUnit(UNIT).apply(LAYOUT)));
        filing.look();

        Files.delete(file);
        filing.look();
        assertThat(notes.sentences.get("layout-disk")).contains(" was removed by another");
        assertThat(notes.answers.get("layout-disk").keySet())
                .containsExactly("Save it again", "Stay with what is here");

        Files.write(file, start);
        filing.look();
        assertThat(notes.sentences).as("it is as it was read").isEmpty();
    }

    @Test
    void thatChangesAreNotKeptIsTold() throws IOException {
        Files.createDirectories(folder.resolve("post.layout.unsaved.json/full"));

        session.apply(new TakeOutUnit(UNIT));

        assertThat(notes.sentences.get("layout-unkept"))
                .startsWith("If the program ended now, your changes of the layout would be lost. The file could not be"
                        + " saved (");
    }

    @Test
    void overWhatAnotherWroteItIsSavedOnlyWhenAskedTo() throws IOException {
        session.apply(new TakeOutUnit(UNIT));
        Files.writeString(file, "{}");
        questions.answering("Write over the file");

        talk.save(() -> {});

        assertThat(questions.asked())
                .containsExactly(
                        "Not saved: The file was changed by another since it was read. Save under another name, or"
                                + " read it again. Nothing is lost.");
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(session.now().layout());
    }

    @Test
    void whatCouldNotBeWrittenCanBeTriedAgain() throws IOException {
        Path inTheWay = Files.createDirectories(folder.resolve("post.layout.previous.json/full"));
        session.apply(new TakeOutUnit(UNIT));
        questions.answering("Try again", "Leave it");

        talk.save(() -> {});

        assertThat(questions.asked())
                .hasSize(2)
                .allMatch(asked -> asked.startsWith("Not saved: The file could not be"));
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(LAYOUT);
        assertThat(inTheWay).exists();
    }

    @Test
    void aFileWhoseNameGotTheUsualEndingIsNotWrittenOverUnasked() {
        Path chosen = folder.resolve("post");
        questions.answering(chosen, "Leave it", chosen, "Write over the file");
        session.apply(new TakeOutUnit(UNIT));

        talk.saveAs(() -> done.add("then"));

        assertThat(questions.asked())
                .last()
                .isEqualTo(
                        "Write over it?: There is a file post.layout.json in that folder already. What it holds is kept"
                                + " as post.layout.previous.json.");
        assertThat(done).isEmpty();
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(LAYOUT);

        talk.saveAs(() -> done.add("then"));

        assertThat(done).containsExactly("saved post.layout.json", "then");
        assertThat(LayoutFiles.read(file).layout()).isEqualTo(session.now().layout());
    }
}
