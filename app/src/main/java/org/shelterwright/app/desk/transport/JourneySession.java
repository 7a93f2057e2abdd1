package org.shelterwright.app.desk.transport;

import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.edit.JourneyEdit;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * The journey on the desk, if one is open. Every change goes through here and comes out as one new {@link JourneyStanding}, with every
 * limit answered. A change may be tried out first, as often as wanted (a drag), and is then kept as one step or given up. For one
 * thread only: that of the window, or of a test.
 */
public final class JourneySession {
    private final JourneyChecker checker;
    private final ReadOnlyObjectWrapper<@Nullable JourneyStanding> standing = new ReadOnlyObjectWrapper<>(null);
    private final ReadOnlyObjectWrapper<@Nullable Focus> focus = new ReadOnlyObjectWrapper<>(null);

    public JourneySession(JourneyChecker checker) {
        this.checker = checker;
    }

    /** {@code null} as long as no journey is open. */
    public ReadOnlyObjectProperty<@Nullable JourneyStanding> standing() {
        return standing.getReadOnlyProperty();
    }

    public Optional<JourneyStanding> now() {
        return Optional.ofNullable(standing.get());
    }

    /** What is looked at; {@code null} as long as no journey is open. */
    public ReadOnlyObjectProperty<@Nullable Focus> focus() {
        return focus.getReadOnlyProperty();
    }

    public JourneyChecker checker() {
        return checker;
    }

    /**
     * Puts a journey on the desk, without a history.
     *
     * @throws IllegalArgumentException with a sentence if it names what there is not
     */
    public void open(JourneyWork work) {
        JourneyScene scene = checker.scene(work.journey(), work.parts());
        standing.set(null);
        focus.set(Focus.first(scene));
        standing.set(new JourneyStanding(History.of(work), scene, checker.check(scene), false));
    }

    /** Looks at something else. Without an effect as long as no journey is open. */
    public void look(UnaryOperator<Focus> change) {
        Focus now = focus.get();
        if (now != null) {
            focus.set(change.apply(now));
        }
    }

    /** The leg that is looked at. */
    public Optional<LegScene> leg() {
        Focus at = focus.get();
        return at == null ? Optional.empty() : now().flatMap(one -> Focus.leg(at.leg(), one.scene()));
    }

    /** The load that is looked at. */
    public Optional<PlacedLoad> load() {
        Focus at = focus.get();
        String id = at == null ? null : at.load();
        return id == null ? Optional.empty() : now().flatMap(one -> one.scene().load(id));
    }

    /** The rows of the leg that is looked at. */
    public Optional<Ledger> legLedger() {
        Focus at = focus.get();
        return at == null
                ? Optional.empty()
                : now().filter(one -> at.leg() <= one.ledger().legs().size())
                        .map(one -> one.ledger().legs().get(at.leg() - 1).ledger());
    }

    /**
     * Makes a change, as one step of the history; what was being tried out is given up.
     *
     * @throws IllegalArgumentException with a sentence if the change makes no sense for the journey, or none is open
     */
    public void apply(JourneyEdit edit) {
        JourneyStanding now = required();
        apply(edit.name(), edit.apply(now.history().current().journey()));
    }

    /** Takes over a journey that came from elsewhere, such as a search, as one step of the history. */
    public void apply(String name, Journey changed) {
        History<JourneyWork> history = required().history();
        show(history.after(name, history.current().with(changed)));
    }

    /** Takes over a journey with what it refers to, such as unsaved work, as one step of the history. */
    public void apply(String name, JourneyWork changed) {
        show(required().history().after(name, changed));
    }

    /** Shows what the journey would be after a change, with its ledger, without keeping it. */
    public void tryOut(JourneyEdit edit) {
        JourneyStanding now = required();
        JourneyWork from = now.history().current();
        set(now.history(), from.with(edit.apply(from.journey())), true);
    }

    /** Keeps what is being tried out as one step of the history. */
    public void keep(String name) {
        JourneyStanding now = required();
        if (now.tryingOut()) {
            show(now.history().after(name, now.history().current().with(now.journey())));
        }
    }

    /** Shows the journey of the history again. */
    public void giveUp() {
        now().filter(JourneyStanding::tryingOut).ifPresent(now -> show(now.history()));
    }

    public void undo() {
        show(required().history().undo());
    }

    public void redo() {
        show(required().history().redo());
    }

    /** Answers every limit from scratch. */
    public void checkAgain() {
        JourneyStanding now = required();
        JourneyScene scene = checker.scene(now.journey(), now.scene().parts());
        standing.set(new JourneyStanding(now.history(), scene, checker.check(scene), now.tryingOut()));
    }

    private JourneyStanding required() {
        return now().orElseThrow(() ->
                new IllegalArgumentException("No journey is open. Open one, or the sample Road-Rail Move."));
    }

    private void show(History<JourneyWork> history) {
        set(history, history.current(), false);
    }

    private void set(History<JourneyWork> history, JourneyWork work, boolean tryingOut) {
        JourneyStanding before = required();
        JourneyScene scene = before.scene().parts() == work.parts()
                ? before.scene().with(work.journey())
                : checker.scene(work.journey(), work.parts());
        JourneyLedger ledger = checker.update(before.ledger(), before.scene(), scene);
        look(now -> now.fitted(scene));
        standing.set(new JourneyStanding(history, scene, ledger, tryingOut));
    }
}
