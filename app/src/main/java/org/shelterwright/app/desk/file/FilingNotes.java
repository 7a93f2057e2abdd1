package org.shelterwright.app.desk.file;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shelterwright.app.desk.ask.Notes;

/**
 * Tells of a file what a person must know without having asked: that it cannot be written to, that another has changed or removed it,
 * that work on it is not kept in case the program ends.
 */
public final class FilingNotes {
    private final Filing<?> filing;
    private final String word;
    private final Notes notes;
    private final Runnable readAgain;
    private final Runnable saveAgain;

    /**
     * @param word what it is, such as "layout"; it also keeps the notes of several files apart
     * @param readAgain reads the file again in place of what is on the desk, after asking
     * @param saveAgain saves what is on the desk although the file is gone
     */
    public FilingNotes(Filing<?> filing, String word, Notes notes, Runnable readAgain, Runnable saveAgain) {
        this.filing = filing;
        this.word = word;
        this.notes = notes;
        this.readAgain = readAgain;
        this.saveAgain = saveAgain;
    }

    /** Tells what holds now, and whatever comes to hold. */
    public void start() {
        filing.state().addListener((observable, before, now) -> tellReadOnly());
        filing.changedOnDisk().addListener((observable, before, changed) -> tellOfChange());
        filing.unkept().addListener((observable, before, now) -> tellUnkept(now));
        tellReadOnly();
    }

    private void tellReadOnly() {
        String readOnly = filing.state().get().readOnly();
        if (readOnly == null) {
            notes.hide(key("read-only"));
        } else {
            notes.show(key("read-only"), readOnly, Map.of("Good", () -> {}));
        }
    }

    private void tellOfChange() {
        if (!filing.changedOnDisk().get()) {
            notes.hide(key("disk"));
            return;
        }
        String name = filing.state()
                .get()
                .file()
                .map(path -> String.valueOf(path.getFileName()))
                .orElse("The file");
        Map<String, Runnable> answers = new LinkedHashMap<>();
        if (filing.removed()) {
            answers.put("Save it again", saveAgain);
        } else {
            answers.put("Read it again", readAgain);
        }
        answers.put("Stay with what is here", filing::ignoreChange);
        notes.show(
                key("disk"),
                name + (filing.removed() ? " was removed" : " was changed") + " by another since it was read.",
                answers);
    }

    private void tellUnkept(String fault) {
        if (fault.isEmpty()) {
            notes.hide(key("unkept"));
        } else {
            notes.show(
                    key("unkept"),
                    "If the program ended now, your changes of the " + word + " would be lost. " + fault,
                    Map.of("Good", () -> {}));
        }
    }

    private String key(String what) {
        return word + "-" + what;
    }
}
