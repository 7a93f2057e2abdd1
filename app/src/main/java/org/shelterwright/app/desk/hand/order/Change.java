package org.shelterwright.app.desk.hand.order;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.layout.Layout;

/**
 * What an order makes of a layout, as one step.
 *
 * @param name as the list of changes shows it
 */
record Change(String name, Layout layout) {
    /** Makes a change from what is selected. */
    interface Maker {
        /**
         * Makes the change.
         *
         * @throws IllegalArgumentException with a sentence, if it cannot be made
         */
        Change make(Chosen chosen);
    }

    static Change of(Chosen chosen, Edit edit) {
        return new Change(edit.name(), edit.apply(chosen.layout()));
    }

    /** Several edits as one step. */
    static Change of(Chosen chosen, String name, List<? extends Edit> edits) {
        Layout layout = chosen.layout();
        for (Edit edit : edits) {
            layout = edit.apply(layout);
        }
        return new Change(name, layout);
    }

    /** A command that makes a change, and says why it cannot. */
    static Command command(
            Session session, String id, String name, List<String> words, List<String> keys, Maker maker) {
        Outcomes outcomes = new Outcomes(session, maker);
        return new Command("edit." + id, name, words, keys, outcomes::obstacle, outcomes::apply);
    }

    /**
     * The same for a change that is too dear to be worked out before it is asked for: what is in its way may show only then, and
     * comes as an {@link IllegalArgumentException} with a sentence.
     *
     * @param check refuses what can be seen at once
     */
    static Command late(
            Session session,
            String id,
            String name,
            List<String> words,
            List<String> keys,
            Consumer<Chosen> check,
            Maker maker) {
        return new Command(
                "edit." + id,
                name,
                words,
                keys,
                () -> {
                    if (session.now().tryingOut()) {
                        return Optional.of("Finish the drag first.");
                    }
                    try {
                        check.accept(Chosen.of(session));
                        return Optional.empty();
                    } catch (IllegalArgumentException refused) {
                        return Optional.of(String.valueOf(refused.getMessage()));
                    }
                },
                () -> {
                    Change change = maker.make(Chosen.of(session));
                    session.apply(change.name, change.layout);
                });
    }

    /** What an order would do, worked out once for each state of things. */
    private static final class Outcomes {
        private final Session session;
        private final Maker maker;
        private @Nullable Chosen chosen;
        private @Nullable Change change;
        private @Nullable String refusal;

        Outcomes(Session session, Maker maker) {
            this.session = session;
            this.maker = maker;
        }

        Optional<String> obstacle() {
            if (session.now().tryingOut()) {
                return Optional.of("Finish the drag first.");
            }
            work();
            return Optional.ofNullable(refusal);
        }

        void apply() {
            work();
            if (change != null) {
                session.apply(change.name, change.layout);
            }
        }

        private void work() {
            Chosen now = Chosen.of(session);
            if (now.equals(chosen)) {
                return;
            }
            chosen = now;
            change = null;
            refusal = null;
            try {
                Change made = maker.make(now);
                if (made.layout.equals(now.layout())) {
                    refusal = "Nothing would change.";
                } else {
                    change = made;
                }
            } catch (IllegalArgumentException refused) {
                refusal = String.valueOf(refused.getMessage());
            }
        }
    }
}
