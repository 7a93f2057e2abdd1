package org.shelterwright.app.desk;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shelterwright.app.desk.ask.Questions;

/** Answers from a list, and remembers what was asked. Without an answer left, a question counts as put away. */
public final class ScriptedQuestions implements Questions {
    private final Deque<Object> answers = new ArrayDeque<>();
    private final List<String> asked = new ArrayList<>();

    /** Answers the next questions: an order or text as a string, a file as a path. */
    public ScriptedQuestions answering(Object... next) {
        answers.addAll(List.of(next));
        return this;
    }

    /** Title and sentence of every question. */
    public List<String> asked() {
        return asked;
    }

    @Override
    public Optional<Integer> choose(String title, String sentence, List<String> orders) {
        return next(title, sentence).map(answer -> {
            int index = orders.indexOf(answer.toString());
            if (index < 0) {
                throw new AssertionError("\"" + answer + "\" is none of " + orders);
            }
            return index;
        });
    }

    @Override
    public Optional<Integer> pick(String title, String sentence, List<Choice> choices) {
        return choose(title, sentence, choices.stream().map(Choice::name).toList());
    }

    @Override
    public Optional<String> text(
            String title,
            String sentence,
            String label,
            String before,
            String order,
            Function<String, Optional<String>> fault) {
        Optional<String> typed = next(title, sentence).map(Object::toString);
        typed.flatMap(fault).ifPresent(wrong -> {
            throw new AssertionError(wrong);
        });
        return typed;
    }

    @Override
    public Optional<Path> fileToOpen(String title) {
        return next(title, "").map(Path.class::cast);
    }

    @Override
    public Optional<Path> fileToSave(String title, Path suggested) {
        return next(title, suggested.toString()).map(Path.class::cast);
    }

    @Override
    public Optional<Path> folder(String title) {
        return next(title, "").map(Path.class::cast);
    }

    @Override
    public void tell(String title, String sentence) {
        asked.add(title + ": " + sentence);
    }

    private Optional<Object> next(String title, String sentence) {
        asked.add(title + ": " + sentence);
        return Optional.ofNullable(answers.poll());
    }
}
