package org.shelterwright.app.desk.session;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.Scene;

/**
 * Has limits that are answered at rest worked out elsewhere, one scene at a time: of those that are asked about meanwhile, the
 * newest is next. Keeps the last answer, so that a drag that is given up costs nothing.
 */
final class Rest {
    private final LimitBook book;
    private final BiConsumer<Scene, List<Row>> answered;
    private @Nullable Work work;
    private @Nullable Scene next;
    private @Nullable Scene last;
    private List<Row> rows = List.of();
    private boolean working;

    /** @param answered called on the thread of the session with a scene and its rows */
    Rest(LimitBook book, BiConsumer<Scene, List<Row>> answered) {
        this.book = book;
        this.answered = answered;
    }

    void begin(Work elsewhere) {
        work = elsewhere;
        go();
    }

    /** The rows of a scene, if it is that of the last answer. */
    Optional<List<Row>> known(Scene scene) {
        return last != null && last.layout() == scene.layout() && last.rules() == scene.rules()
                ? Optional.of(rows)
                : Optional.empty();
    }

    void ask(Scene scene) {
        next = scene;
        go();
    }

    void forget() {
        last = null;
    }

    private void go() {
        Scene scene = next;
        if (working || work == null || scene == null) {
            return;
        }
        next = null;
        working = true;
        work.start("", () -> LedgerBuilder.atRest(book, scene), found -> take(scene, found), failure -> {
            working = false;
            throw new IllegalStateException("The limits at rest could not be answered.", failure);
        });
    }

    private void take(Scene scene, List<Row> found) {
        working = false;
        last = scene;
        rows = found;
        answered.accept(scene, found);
        go();
    }
}
