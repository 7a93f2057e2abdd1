package org.shelterwright.app.desk.space;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Point3D;
import javafx.scene.input.MouseDragEvent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Carry;
import org.shelterwright.app.desk.hand.Clearance;
import org.shelterwright.app.desk.hand.Held;
import org.shelterwright.app.desk.hand.Neighbours;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.app.desk.space.pick.Picker;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;

/**
 * A unit that is carried over the body, drawn from a list or taken up out of a drag: shown where it can be mounted nearest to
 * what is pointed at, on whatever that is, and kept there by letting go.
 */
final class Receiving {
    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final Region pane;
    private final Runnable redraw;
    private @Nullable Carry carry;

    Receiving(Session session, Showing showing, Viewpoint viewpoint, Region pane, Runnable redraw) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        this.pane = pane;
        this.redraw = redraw;
        pane.addEventHandler(MouseDragEvent.MOUSE_DRAG_ENTERED, this::entered);
        pane.addEventHandler(MouseDragEvent.MOUSE_DRAG_OVER, event -> to(event.getX(), event.getY()));
        pane.addEventHandler(MouseDragEvent.MOUSE_DRAG_RELEASED, event -> drop());
        pane.addEventHandler(MouseDragEvent.MOUSE_DRAG_EXITED, event -> cancel());
    }

    /** Distances of what is held to its neighbours. */
    List<Clearance> clearances() {
        return Optional.ofNullable(carry)
                .flatMap(held -> session.now().scene().unit(held.unit()))
                .map(unit -> Neighbours.of(session.now().scene(), unit, Situation.ON_STATION))
                .orElse(List.of());
    }

    /** Takes up a unit that is placed, to be mounted wherever the pointer goes. */
    void take(String unit) {
        carry = Carry.take(session, unit);
    }

    boolean carries() {
        return carry != null;
    }

    /** What it is mounted on, such as "On Chart table, "; empty if nothing is carried. */
    Optional<String> onto() {
        return Optional.ofNullable(carry)
                .map(Carry::onto)
                .map(onto ->
                        onto.isEmpty() ? "" : onto.substring(0, 1).toUpperCase(Locale.ROOT) + onto.substring(1) + ", ");
    }

    /** Shows it where the pointer is. */
    void to(double x, double y) {
        Carry held = carry;
        if (held != null) {
            pointed(x, y, held.unit()).ifPresent(place -> {
                held.to(place);
                if (!session.selection().holds(held.unit())) {
                    session.selection().only(held.unit());
                }
            });
            redraw.run();
        }
    }

    void drop() {
        if (carry != null) {
            carry.drop();
            carry = null;
            redraw.run();
        }
    }

    private void entered(MouseDragEvent event) {
        if (event.getGestureSource() instanceof Held source) {
            carry = source.take(session);
            pane.requestFocus();
            to(event.getX(), event.getY());
        }
    }

    void cancel() {
        if (carry != null) {
            carry.cancel();
            carry = null;
            redraw.run();
        }
    }

    /** The place under a spot of the view, as if the unit that is held were not there. */
    private Optional<Point> pointed(double x, double y, String unit) {
        Picker shown = showing.picker(session);
        Picker others = new Picker(
                shown.scene(),
                shown.situation(),
                id -> !id.equals(unit) && shown.shown().test(id),
                shown.section());
        return others.any(viewpoint.now().ray(x, y)).map(Hit::place).map(Receiving::micrometres);
    }

    static Point micrometres(Point3D mm) {
        return new Point((int) Math.round(mm.getX() * 1e3), (int) Math.round(mm.getY() * 1e3), (int)
                Math.round(mm.getZ() * 1e3));
    }
}
