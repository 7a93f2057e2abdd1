package org.shelterwright.app.desk.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.shelterwright.app.desk.ask.FailureWords;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.app.sheet.Particulars;

/**
 * Asks where documents are to be written, writes them as drafts of who works at the desk, and says what came of it.
 *
 * @param told is given sentences that need no answer
 */
public record DocumentTalk(Questions questions, Work work, Person person, Consumer<String> told) {
    /**
     * Writes documents, unless the question is put away.
     *
     * @param question title of the question for the folder
     * @param writing writes into the folder and gives what was written; not on the thread of the window
     */
    public void write(String question, BiFunction<Particulars, Path, ? extends List<?>> writing) {
        questions.folder(question).ifPresent(folder -> {
            Particulars particulars = particulars();
            work.start(
                    "Writing documents",
                    () -> writing.apply(particulars, folder).size(),
                    written -> told.accept(written + " documents were written to " + folder + "."),
                    failure -> questions.tell("The documents were not written", FailureWords.of(failure)));
        });
    }

    private Particulars particulars() {
        Particulars draft = Particulars.draft(LocalDate.now(ZoneId.systemDefault()));
        return new Particulars(
                draft.owner(),
                person.name().orElse(draft.createdBy()),
                draft.approvedBy(),
                draft.revision(),
                draft.date());
    }
}
