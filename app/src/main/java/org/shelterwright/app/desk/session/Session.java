package org.shelterwright.app.desk.session;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.scene.Scene;

/**
 * The layout on the desk. Every change goes through here and comes out as one new {@link Standing}, with the live ledger
 * answered. A change may be tried out first, as often as wanted (a drag), and is then kept as one step or given up. For
 * one thread only: that of the window, or of a test.
 */
public final class Session {
    private final Checker checker;
    private final Selection selection = new Selection();
    private final ObjectProperty<Situation> situation = new SimpleObjectProperty<>(Situation.ON_STATION);
    private final ReadOnlyObjectWrapper<Standing> standing = new ReadOnlyObjectWrapper<>();
    private LedgerBuilder builder;

    public Session(Checker checker, Layout layout) {
        this.checker = checker;
        builder = new LedgerBuilder(checker.book());
        Scene scene = checker.scene(layout);
        standing.set(new Standing(History.of(layout), scene, builder.update(scene), false));
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
        standing.set(new Standing(History.of(layout), scene, builder.update(scene), false));
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
        Scene scene = checker.scene(now().layout());
        standing.set(new Standing(now().history(), scene, builder.update(scene), now().tryingOut()));
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
        Ledger ledger = tryingOut ? builder.whileMoving(scene) : builder.update(scene);
        standing.set(new Standing(history, scene, ledger, tryingOut));
    }
}
