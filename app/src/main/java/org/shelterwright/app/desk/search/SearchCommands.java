package org.shelterwright.app.desk.search;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;

/** What can be done with the search for places. */
final class SearchCommands {
    /** By which the layouts that are offered are told apart. */
    static final List<String> LETTERS = List.of("A", "B", "C");

    private final Search search;
    private final Runnable start;
    private final IntConsumer adopt;

    /** @param adopt is given which of the layouts that are offered is taken over, from 0 */
    SearchCommands(Search search, Runnable start, IntConsumer adopt) {
        this.search = search;
        this.start = start;
        this.adopt = adopt;
    }

    void addTo(Commands commands) {
        commands.add(new Command(
                "search.start",
                "Search for places",
                List.of("fit", "solve", "find"),
                List.of("F7"),
                search::obstacle,
                start));
        commands.add(new Command(
                "search.stop",
                "Stop the search and keep the best",
                List.of("end"),
                List.of("Shift+F7"),
                () -> search.stand().get().running() ? Optional.empty() : Optional.of("No search is going on."),
                search::stop));
        commands.add(new Command(
                "search.put-away",
                "Put away what the search found",
                List.of("close", "clear"),
                List.of(),
                () -> search.stand().get().running()
                        ? Optional.of("A search is going on. Stop it first.")
                        : search.stand().get().idle() ? Optional.of("Nothing was searched for yet.") : Optional.empty(),
                search::forget));
        for (int i = 0; i < LETTERS.size(); i++) {
            commands.add(adoption(i));
        }
    }

    private Command adoption(int index) {
        String letter = LETTERS.get(index);
        return new Command(
                "search.take-" + letter.toLowerCase(Locale.ROOT),
                "Take over layout " + letter,
                List.of("adopt", "search"),
                List.of(),
                () -> index < search.stand().get().options().size()
                        ? Optional.empty()
                        : Optional.of("The search has found no layout " + letter + "."),
                () -> adopt.accept(index));
    }
}
