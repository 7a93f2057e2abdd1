package org.shelterwright.app.desk.space;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Catching;
import org.shelterwright.app.desk.hand.Clearance;
import org.shelterwright.app.desk.hand.Grip;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.measure.Mark;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.space.Point;

/**
 * What the pointer does in the space. The first button selects, drags units, frames what to select from empty ground, and
 * takes distances while measuring; with Alt it turns the view. Escape ends what is going on. While something is dragged, the
 * pane has the style class {@value #STEERED}, and keys go to the drag.
 */
public final class Pointing {
    /** Style class of a view whose keys steer a drag. */
    public static final String STEERED = "steered";

    /** How far a press moves before it is a drag (px). */
    private static final double DRAG = 4;

    /** How near a catch must be (px). */
    private static final double CATCH = 10;

    /** Step of the grid that drags catch on (µm). */
    private static final int GRID = 50_000;

    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final Region pane;
    private final Runnable redraw;
    private final Hovering hovering;
    private final Receiving receiving;
    private final Gauging gauging;

    private @Nullable Point2D press;
    private @Nullable Point2D last;
    private @Nullable Hit pressed;
    private @Nullable Dragging drag;
    private @Nullable Bounds frame;

    public Pointing(Session session, Showing showing, Viewpoint viewpoint, Region pane, Runnable redraw) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        this.pane = pane;
        this.redraw = redraw;
        hovering = new Hovering(session, showing, viewpoint, redraw);
        pane.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        pane.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        pane.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        pane.addEventHandler(MouseEvent.MOUSE_MOVED, hovering::moved);
        pane.addEventHandler(MouseEvent.MOUSE_EXITED, event -> hovering.away());
        pane.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        pane.addEventHandler(KeyEvent.KEY_RELEASED, this::keyReleased);
        pane.addEventHandler(KeyEvent.KEY_TYPED, this::keyTyped);
        receiving = new Receiving(session, showing, viewpoint, pane, redraw);
        gauging = new Gauging(session, showing, viewpoint);
    }

    /** What caught in the drag that goes on. */
    public List<Catch> catches() {
        return drag == null ? List.of() : drag.catches();
    }

    /** Distances to neighbours in the drag that goes on. */
    public List<Clearance> clearances() {
        return drag == null ? receiving.clearances() : drag.clearances();
    }

    /** What keys do while something is held; empty if nothing is. */
    public Optional<String> hint() {
        if (drag != null) {
            return Optional.of(Hint.SLIDING.words());
        }
        return receiving.onto().map(onto -> onto + (pressed == null ? Hint.CARRYING : Hint.MOUNTING).words());
    }

    @Nullable
    public Bounds frame() {
        return frame;
    }

    @Nullable
    public String hovered() {
        return drag == null ? hovering.unit() : null;
    }

    @Nullable
    public Spot naming() {
        return hovering.naming();
    }

    @Nullable
    public Mark begun() {
        return gauging.begun();
    }

    /** The place that was pointed at last, on a unit or on a side of the body. */
    public Optional<Point> place() {
        return hovering.place().map(Receiving::micrometres);
    }

    public Optional<String> pointed() {
        return hovering.place()
                .map(at -> "x " + Numerals.of(at.getX(), 0) + ", y " + Numerals.of(at.getY(), 0) + ", z "
                        + Numerals.of(at.getZ(), 0));
    }

    private void pressed(MouseEvent event) {
        pane.requestFocus();
        hovering.away();
        if (event.getButton() == MouseButton.PRIMARY && !event.isAltDown()) {
            press = new Point2D(event.getX(), event.getY());
            pressed = unit(event).orElse(null);
        }
    }

    private void dragged(MouseEvent event) {
        Point2D from = press;
        last = new Point2D(event.getX(), event.getY());
        if (receiving.carries()) {
            receiving.to(event.getX(), event.getY());
            return;
        }
        if (from == null || !event.isPrimaryButtonDown() || showing.measuring().get()) {
            return;
        }
        if (drag == null && frame == null && from.distance(event.getX(), event.getY()) < DRAG) {
            return;
        }
        Eye eye = viewpoint.now();
        Hit hit = pressed;
        if (drag == null && frame == null && hit != null) {
            take(hit, eye.scaleAt(hit.place()), from);
        }
        if (drag != null) {
            drag.to(eye.ray(event.getX(), event.getY()), event.isShiftDown());
            redraw.run();
        } else if (hit == null) {
            frame = new Bounds(
                    Math.min(from.getX(), event.getX()) / ScreenCanvas.PIXELS,
                    Math.min(from.getY(), event.getY()) / ScreenCanvas.PIXELS,
                    Math.max(from.getX(), event.getX()) / ScreenCanvas.PIXELS,
                    Math.max(from.getY(), event.getY()) / ScreenCanvas.PIXELS);
            redraw.run();
        }
    }

    private void take(Hit hit, double scale, Point2D from) {
        if (!session.selection().holds(hit.unit())) {
            session.selection().only(hit.unit());
        }
        Set<String> units = new LinkedHashSet<>(session.selection().units().get());
        drag = Grip.take(
                        session,
                        units,
                        viewpoint.now().ray(from.getX(), from.getY()),
                        new Catching(Math.min(10_000, CATCH / scale), GRID))
                .map(Dragging::new)
                .orElse(null);
        if (drag != null) {
            pane.getStyleClass().add(STEERED);
        }
    }

    private void released(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || press == null) {
            return;
        }
        if (receiving.carries()) {
            receiving.drop();
        } else if (drag != null) {
            drag.drop();
        } else if (frame != null) {
            Framed.select(session, viewpoint.now(), showing.picker(session), frame, event.isShortcutDown());
        } else if (showing.measuring().get()) {
            gauging.take(event.getX(), event.getY());
        } else {
            click(event);
        }
        end();
    }

    private void click(MouseEvent event) {
        Hit hit = pressed;
        if (hit == null) {
            if (!event.isShortcutDown()) {
                session.selection().clear();
            }
        } else if (event.isShortcutDown()) {
            session.selection().toggle(hit.unit());
        } else {
            session.selection().only(hit.unit());
        }
    }

    private void key(KeyEvent event) {
        Hit hit = pressed;
        if (event.getCode() == KeyCode.M && hit != null && (drag != null || receiving.carries())) {
            turnMounting(hit);
            event.consume();
        } else if (drag != null && drag.pressed(event)) {
            redraw.run();
            event.consume();
        } else if (drag != null && event.getCode() == KeyCode.ENTER) {
            drag.drop();
            end();
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            escape(event);
        }
    }

    /** From sliding along its surface to going wherever the pointer is, onto another surface or unit too, and back. */
    private void turnMounting(Hit hit) {
        Point2D at = last;
        Point2D from = press;
        if (at == null || from == null) {
            return;
        }
        if (receiving.carries()) {
            receiving.cancel();
            Eye eye = viewpoint.now();
            take(hit, eye.scaleAt(hit.place()), from);
            if (drag != null) {
                drag.to(eye.ray(at.getX(), at.getY()), false);
            }
        } else if (drag != null) {
            drag.cancel();
            drag = null;
            receiving.take(hit.unit());
            receiving.to(at.getX(), at.getY());
        }
        redraw.run();
    }

    private void keyReleased(KeyEvent event) {
        if (drag != null) {
            drag.released(event);
            redraw.run();
        }
    }

    private void keyTyped(KeyEvent event) {
        if (drag != null && !event.getCharacter().isEmpty() && drag.typed(event.getCharacter())) {
            redraw.run();
            event.consume();
        }
    }

    private void escape(KeyEvent event) {
        if (drag != null || frame != null || receiving.carries()) {
            if (drag != null) {
                drag.cancel();
            }
            receiving.cancel();
            end();
            event.consume();
        } else if (showing.measuring().get()) {
            showing.measuring().set(false);
            event.consume();
        }
    }

    private void end() {
        press = null;
        pressed = null;
        drag = null;
        frame = null;
        pane.getStyleClass().remove(STEERED);
        redraw.run();
    }

    private Optional<Hit> unit(MouseEvent event) {
        return showing.picker(session).unit(viewpoint.now().ray(event.getX(), event.getY()));
    }
}
