package org.shelterwright.app.desk.ask;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Asks the person at the desk and waits for the answer. Tests answer at once. For the window's thread. */
public interface Questions {
    /**
     * Asks to choose one of several answers.
     *
     * @param title what it is about, in a few words
     * @param sentence what there is to decide
     * @param answers what can be done, as orders ("Save", "Do not save"), the usual one first
     * @return index of the answer; empty if the question was put away
     */
    Optional<Integer> choose(String title, String sentence, List<String> answers);

    /**
     * One of several things to choose from.
     *
     * @param name what it is called
     * @param detail what else tells it from the others; may be empty
     */
    record Choice(String name, String detail) {}

    /**
     * Asks to choose one thing of a list, however long.
     *
     * @param choices what there is, the usual one first
     * @return index of the choice; empty if the question was put away
     */
    Optional<Integer> pick(String title, String sentence, List<Choice> choices);

    /**
     * Asks for a line of text.
     *
     * @param label what is to be typed
     * @param before what stands in the field at first
     * @param order what happens then, as an order: "Accept"
     * @param fault says what is wrong with what was typed; empty if nothing is
     */
    Optional<String> text(
            String title,
            String sentence,
            String label,
            String before,
            String order,
            Function<String, Optional<String>> fault);

    /** Asks for a file to read. */
    Optional<Path> fileToOpen(String title);

    /**
     * Asks for a file to write.
     *
     * @param suggested its name and folder at first
     */
    Optional<Path> fileToSave(String title, Path suggested);

    /** Asks for a folder to write into. */
    Optional<Path> folder(String title);

    /** Tells something that must be read before going on. */
    void tell(String title, String sentence);
}
