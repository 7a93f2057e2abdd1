package org.shelterwright.app.desk.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.layouts.file.SafeSave;

/** What a person is asked about a file: where it is to be saved, whether unsaved work is kept, and whether work that was found is taken. */
public final class FilingTalk<T> {
    private final Filing<T> filing;
    private final Questions questions;
    private final Subject subject;
    private final Consumer<Path> saved;

    /**
     * What is filed, in words.
     *
     * @param name as a sentence begins with it, such as "The journey Road-Rail Move"
     * @param fileName what a new file of it may be called
     * @param question title of the question for another name
     */
    public record Subject(Supplier<String> name, Supplier<String> fileName, String question) {}

    /** @param saved is told each file into which it was saved */
    public FilingTalk(Filing<T> filing, Questions questions, Subject subject, Consumer<Path> saved) {
        this.filing = filing;
        this.questions = questions;
        this.subject = subject;
        this.saved = saved;
    }

    /** Goes on once nothing unsaved is left that the person wants to keep. */
    public void whenSafe(Runnable then) {
        int changes = filing.changesSinceSave();
        if (changes == 0) {
            then.run();
            return;
        }
        Optional<Integer> answer = questions.choose(
                "Save first?",
                subject.name().get() + " has " + (changes == 1 ? "1 change that is" : changes + " changes that are")
                        + " not saved.",
                List.of("Save", "Drop the changes", "Stay here"));
        if (answer.equals(Optional.of(0))) {
            save(then);
        } else if (answer.equals(Optional.of(1))) {
            then.run();
        }
    }

    /** Saves into its file, or asks for one where there is none that can be written. */
    public void save(Runnable then) {
        OnFile<T> state = filing.state().get();
        if (state.file().isEmpty() || state.readOnly() != null) {
            saveAs(then);
        } else {
            filing.save(false, () -> done(then), this::notSaved);
        }
    }

    /** Saves into its file although another has changed or removed it: to be called only once that was answered for. */
    public void saveOver() {
        filing.save(true, () -> done(() -> {}), this::tell);
    }

    public void saveAs(Runnable then) {
        Path suggested = filing.state()
                .get()
                .file()
                .orElseGet(() -> Path.of(subject.fileName().get()));
        questions.fileToSave(subject.question(), suggested).ifPresent(chosen -> {
            Path path = filing.withEnding(chosen);
            // Who chose the file was asked about one of the chosen name only, not about the one with the ending.
            boolean asked = path.equals(chosen) || !Files.exists(path);
            if (asked || mayReplace(path)) {
                filing.saveAs(path, () -> done(then), this::tell);
            }
        });
    }

    private boolean mayReplace(Path path) {
        return questions
                .choose(
                        "Write over it?",
                        "There is a file " + path.getFileName() + " in that folder already. What it holds is kept as "
                                + SafeSave.previous(path).getFileName() + ".",
                        List.of("Leave it", "Write over the file"))
                .equals(Optional.of(1));
    }

    /** Offers unsaved work of an earlier run, if there is any. */
    public void offerRecovery() {
        filing.recovery().ifPresent(found -> {
            Optional<Integer> answer = questions.choose(
                    "Unsaved work was found",
                    found.sentence(ZoneId.systemDefault(), LocalDate.now(ZoneId.systemDefault())),
                    List.of("Take the unsaved work", "Drop it"));
            if (answer.equals(Optional.of(0))) {
                filing.takeRecovery();
            } else if (answer.equals(Optional.of(1))) {
                filing.dropRecovery();
            }
        });
    }

    private void notSaved(String sentence) {
        boolean stale = filing.stale();
        Optional<Integer> answer = questions.choose(
                "Not saved",
                sentence + (stale ? " Nothing is lost." : ""),
                List.of("Save under another name", stale ? "Write over the file" : "Try again", "Leave it"));
        if (answer.equals(Optional.of(0))) {
            saveAs(() -> {});
        } else if (answer.equals(Optional.of(1)) && stale) {
            saveOver();
        } else if (answer.equals(Optional.of(1))) {
            save(() -> {});
        }
    }

    private void tell(String why) {
        questions.tell("Not saved", why);
    }

    private void done(Runnable then) {
        filing.state().get().file().ifPresent(saved);
        then.run();
    }
}
