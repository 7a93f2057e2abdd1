package org.shelterwright.app.desk.bolt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.edit.SetBoltDown;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.OrderFinder;
import org.shelterwright.solver.order.Schedule;

/**
 * Bolting down of the layout on the desk, without controls: its steps, where the work stands, and changes of the order. What
 * takes long is done elsewhere. Every change is one step of the session's history.
 */
public final class BoltDesk {
    private final Session session;
    private final Work work;
    private final OrderFinder finder = new OrderFinder();
    private final ReadOnlyObjectWrapper<BoltStand> stand = new ReadOnlyObjectWrapper<>(BoltStand.NONE);
    private final DoubleProperty at = new SimpleDoubleProperty(0);
    private boolean shown;
    private @Nullable Layout planned;

    public BoltDesk(Session session, Work work) {
        this.session = session;
        this.work = work;
        session.standing().addListener((observable, before, now) -> follow());
    }

    ReadOnlyObjectProperty<BoltStand> stand() {
        return stand.getReadOnlyProperty();
    }

    /**
     * Where the work stands: so many steps are done, and the part behind the point is the share of the way in that the next
     * unit has come.
     */
    DoubleProperty at() {
        return at;
    }

    Session session() {
        return session;
    }

    /** Whether the page is looked at: only then are steps worked out. */
    public void show(boolean wanted) {
        shown = wanted;
        follow();
    }

    /** The step that is being done or was done last, with how far its unit has come in, from 0 to 1. */
    Optional<BoltDownStep> step() {
        BoltDownPlan plan = stand.get().plan();
        return plan == null || plan.steps().isEmpty()
                ? Optional.empty()
                : Optional.of(plan.steps().get(number() - 1));
    }

    /** Number of the step that is looked at, from 1. */
    int number() {
        return Math.max(1, Math.min(stand.get().steps(), (int) Math.ceil(at.get())));
    }

    /** Share of its way in that the unit of the step has come. */
    double along() {
        return Math.max(0, Math.min(1, at.get() - (number() - 1)));
    }

    /** Goes to a step, with its unit in place. */
    void go(int number) {
        at.set(Math.max(0, Math.min(stand.get().steps(), number)));
    }

    /** Why no order can be looked for now; empty if one can. */
    Optional<String> obstacle() {
        if (session.now().tryingOut()) {
            return Optional.of("Finish the drag first.");
        }
        if (stand.get().working()) {
            return Optional.of("The steps are being worked out.");
        }
        return session.now().scene().units().isEmpty()
                ? Optional.of("Nothing is placed yet. Place units on the Fit-out page first.")
                : Optional.empty();
    }

    /** Looks for an order of all that is placed, and puts it on the desk. What a person has set as before and after is kept. */
    void find(int fitters) {
        Scene scene = session.now().scene();
        BoltDownOrder old = scene.layout().boltDown();
        List<BoltDownOrder.Before> before = old == null ? List.of() : old.before();
        stand.set(stand.get().busy());
        work.start(
                "Looking for an order",
                () -> finder.find(scene, before, fitters),
                found -> take(scene.layout(), found),
                failure -> stand.set(stand.get().refused(String.valueOf(failure.getMessage()))));
    }

    private void take(Layout asked, FoundOrder found) {
        if (session.now().layout() != asked) {
            stand.set(stand.get().refused("The layout has changed since. Look for an order again."));
            return;
        }
        stand.set(stand.get().with(found));
        at.set(0);
        session.apply(new SetBoltDown(found.order()));
        follow();
    }

    /**
     * Brings a step in earlier or later. Refused with a reason if a unit then has no way in.
     *
     * @param number of the step, from 1
     * @param by one earlier: -1; one later: 1
     */
    void move(int number, int by) {
        Scene scene = session.now().scene();
        BoltDownOrder order = scene.layout().boltDown();
        int other = number + by;
        if (order == null
                || number < 1
                || other < 1
                || Math.max(number, other) > order.steps().size()) {
            return;
        }
        List<BoltDownOrder.BroughtIn> steps = new ArrayList<>(order.steps());
        Collections.swap(steps, number - 1, other - 1);
        BoltDownOrder changed = order.withSteps(steps);
        Layout layout = scene.layout();
        stand.set(stand.get().busy());
        work.start(
                "Trying the order",
                () -> OrderTrial.of(scene.after(layout.withBoltDown(changed)), changed),
                trial -> take(layout, changed, trial, other),
                failure -> stand.set(stand.get().refused(String.valueOf(failure.getMessage()))));
    }

    private void take(Layout asked, BoltDownOrder changed, Optional<String> refusal, int number) {
        if (session.now().layout() != asked) {
            stand.set(stand.get().refused("The layout has changed since. Move the step again."));
        } else if (refusal.isPresent()) {
            stand.set(stand.get().refused(refusal.get()));
        } else {
            stand.set(new BoltStand(stand.get().plan(), stand.get().schedule(), null, false, ""));
            session.apply(new SetBoltDown(changed));
            go(number);
        }
    }

    private void follow() {
        Layout layout = session.now().layout();
        if (!shown || session.now().tryingOut() || layout == planned) {
            return;
        }
        planned = layout;
        if (layout.boltDown() == null) {
            at.set(0);
            stand.set(BoltStand.NONE);
            return;
        }
        Scene scene = session.now().scene();
        stand.set(stand.get().busy());
        work.start(
                "Working out the steps",
                () -> BoltDownPlan.of(scene).orElseThrow(),
                plan -> {
                    if (layout == planned) {
                        stand.set(stand.get().at(plan, Schedule.of(plan)));
                        at.set(Math.min(at.get(), plan.steps().size()));
                    }
                },
                failure -> stand.set(stand.get().refused(String.valueOf(failure.getMessage()))));
    }
}
