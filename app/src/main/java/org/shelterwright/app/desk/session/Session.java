package org.shelterwright.app.desk.session;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.Scene;

/**
 * The layout on the desk. Every change goes through here and comes out as one new {@link Standing}, with the live ledger
 * answered. A change may be tried out first, as often as wanted (a drag), and is then kept as one step or given up. Limits
 * that are answered at rest may be worked out elsewhere: their answer comes a moment later as another standing, unless a
 * newer change has outdated it. For one thread only: that of the window, or of a test.
 */
public final class Session {
    private final Checker checker;
    private final Selection selection = new Selection();
    private final ObjectProperty<Situation> situation = new SimpleObjectProperty<>(Situation.ON_STATION);
    private final ReadOnlyObjectWrapper<Standing> standing = new ReadOnlyObjectWrapper<>();
    private final @Nullable Rest rest;
    private LedgerBuilder builder;

    /** A session that answers every limit at once. */
    public Session(Checker checker, Layout layout) {
        this(checker, layout, false);
    }

    private Session(Checker checker, Layout layout, boolean elsewhere) {
        this.checker = checker;
        rest = elsewhere ? new Rest(checker.book(), this::settle) : null;
        builder = new LedgerBuilder(checker.book());
        answer(History.of(layout), checker.scene(layout), false);
    }

    /** A session that has limits at rest answered elsewhere, once it is told where. */
    public static Session answeredElsewhere(Checker checker, Layout layout) {
        return new Session(checker, layout, true);
    }

    /** Says where limits at rest are worked out; of no effect on a session that answers all at once. */
    public void answerBy(Work work) {
        if (rest != null) {
            rest.begin(work);
        }
    }

    public ReadOnlyObjectProperty<Standing> standing() {
        return standing.getReadOnlyProperty();
    }

    public Standing now() {
        return standing.get();
    }

    public Selection selection() {
        return selection;
    }

    /** The situation that is shown and edited. The ledger always answers both. */
    public ObjectProperty<Situation> situation() {
        return situation;
    }

    public Checker checker() {
        return checker;
    }

    /**
     * Puts another layout on the desk, without a history.
     *
     * @throws IllegalArgumentException with a sentence if its brief names a rule set or limit that there is not
     */
    public void open(Layout layout) {
        Scene scene = checker.scene(layout);
        selection.clear();
        builder = new LedgerBuilder(checker.book());
        answer(History.of(layout), scene, false);
    }

    /**
     * Makes a change, as one step of the history; what was being tried out is given up.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for the current layout
     */
    public void apply(Edit edit) {
        show(now().history().after(edit));
    }

    /** Takes over a layout that came from elsewhere, such as a search, as one step of the history. */
    public void apply(String name, Layout changed) {
        show(now().history().after(name, changed));
    }

    /**
     * Shows what the current layout of the history would be after a change, with its ledger, without keeping it.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for the current layout
     */
    public void tryOut(Edit edit) {
        tryOut(edit.apply(now().history().current()));
    }

    /** Shows a layout that is not in the history, with its ledger. */
    public void tryOut(Layout layout) {
        set(now().history(), layout, true);
    }

    /** Keeps what is being tried out as one step of the history. */
    public void keep(String name) {
        if (now().tryingOut()) {
            show(now().history().after(name, now().layout()));
        }
    }

    /** Shows the layout of the history again. */
    public void giveUp() {
        if (now().tryingOut()) {
            show(now().history());
        }
    }

    public void undo() {
        show(now().history().undo());
    }

    public void redo() {
        show(now().history().redo());
    }

    /** Answers every limit from scratch. */
    public void checkAgain() {
        builder = new LedgerBuilder(checker.book());
        if (rest != null) {
            rest.forget();
        }
        answer(now().history(), checker.scene(now().layout()), now().tryingOut());
    }

    private void show(History<Layout> history) {
        set(history, history.current(), false);
    }

    private void set(History<Layout> history, Layout layout, boolean tryingOut) {
        Scene before = now().scene();
        boolean sameAsk = layout.brief() == before.brief()
                && layout.parts() == before.layout().parts();
        Scene scene = sameAsk ? before.after(layout) : checker.scene(layout);
        selection.keepOnly(layout);
        answer(history, scene, tryingOut);
    }

    private void answer(History history, Scene scene, boolean tryingOut) {
        Standing next = new Standing(history, scene, ledger(scene, tryingOut), tryingOut);
        standing.set(next);
        if (rest != null && !tryingOut && now() == next && !next.settled()) {
            rest.ask(scene);
        }
    }

    private Ledger ledger(Scene scene, boolean tryingOut) {
        if (tryingOut) {
            return builder.whileMoving(scene);
        }
        if (rest == null) {
            return builder.update(scene);
        }
        Ledger before = builder.beforeRest(scene);
        return rest.known(scene)
                .map(rows -> LedgerBuilder.together(before, rows))
                .orElse(before);
    }

    /** Takes what limits at rest have answered, unless the scene is not the one on the desk any more. */
    private void settle(Scene scene, List<Row> rows) {
        Standing now = now();
        if (now.scene() == scene && !now.tryingOut()) {
            standing.set(new Standing(now.history(), scene, LedgerBuilder.together(now.ledger(), rows), false));
        }
    }
}
