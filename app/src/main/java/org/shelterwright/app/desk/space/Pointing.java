package org.shelterwright.app.desk.space;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import javafx.animation.PauseTransition;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catching;
import org.shelterwright.app.desk.hand.Grip;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.measure.Distance;
import org.shelterwright.app.desk.space.measure.Mark;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;

/**
 * What the pointer does in the space. The first button selects, drags units, frames what to select from empty ground, and
 * takes distances while measuring; with Alt it turns the view. Escape ends what is going on.
 */
public final class Pointing {
    /** How far a press moves before it is a drag (px). */
    private static final double DRAG = 4;

    /** How near a catch must be (px). */
    private static final double CATCH = 10;

    /** Step of the grid that drags catch on (µm). */
    private static final int GRID = 50_000;

    private static final Duration REST = Duration.millis(400);

    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final Region pane;
    private final Runnable redraw;
    private final PauseTransition rest = new PauseTransition(REST);

    private @Nullable Point2D press;
    private @Nullable Hit pressed;
    private @Nullable Grip grip;
    private @Nullable Bounds frame;
    private @Nullable String hovered;
    private @Nullable Spot naming;
    private @Nullable Point3D pointed;
    private @Nullable Mark begun;

    public Pointing(Session session, Showing showing, Viewpoint viewpoint, Region pane, Runnable redraw) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        this.pane = pane;
        this.redraw = redraw;
        pane.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        pane.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        pane.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        pane.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        pane.addEventHandler(MouseEvent.MOUSE_EXITED, event -> hover(null));
        pane.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        showing.measuring().addListener((observable, before, now) -> begun = null);
    }

    public Optional<Grip> grip() {
        return Optional.ofNullable(grip);
    }

    @Nullable
    public Bounds frame() {
        return frame;
    }

    @Nullable
    public String hovered() {
        return grip == null ? hovered : null;
    }

    @Nullable
    public Spot naming() {
        return naming;
    }

    @Nullable
    public Mark begun() {
        return begun;
    }

    public Optional<String> pointed() {
        return Optional.ofNullable(pointed)
                .map(at -> "x " + Numerals.of(at.getX(), 0) + ", y " + Numerals.of(at.getY(), 0) + ", z "
                        + Numerals.of(at.getZ(), 0));
    }

    private void pressed(MouseEvent event) {
        pane.requestFocus();
        hover(null);
        if (event.getButton() == MouseButton.PRIMARY && !event.isAltDown()) {
            press = new Point2D(event.getX(), event.getY());
            pressed = unit(event).orElse(null);
        }
    }

    private void dragged(MouseEvent event) {
        Point2D from = press;
        if (from == null || !event.isPrimaryButtonDown() || showing.measuring().get()) {
            return;
        }
        if (grip == null && frame == null && from.distance(event.getX(), event.getY()) < DRAG) {
            return;
        }
        Eye eye = viewpoint.now();
        Hit hit = pressed;
        if (grip == null && frame == null && hit != null) {
            take(hit, eye.scaleAt(hit.place()), from);
        }
        if (grip != null) {
            grip.to(eye.ray(event.getX(), event.getY()));
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
        grip = Grip.take(
                        session,
                        units,
                        viewpoint.now().ray(from.getX(), from.getY()),
                        new Catching(Math.min(10_000, CATCH / scale), GRID))
                .orElse(null);
    }

    private void released(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || press == null) {
            return;
        }
        if (grip != null) {
            grip.drop();
        } else if (frame != null) {
            select(frame, event.isShortcutDown());
        } else if (showing.measuring().get()) {
            measure(event);
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

    private void measure(MouseEvent event) {
        Eye eye = viewpoint.now();
        showing.picker(session).any(eye.ray(event.getX(), event.getY())).ifPresent(hit -> {
            Mark mark = Mark.of(hit, eye);
            Mark first = begun;
            if (first == null) {
                begun = mark;
            } else {
                begun = null;
                showing.distances().add(Distance.between(first, mark));
            }
        });
    }

    /** Selects the units whose outline lies in the frame. */
    private void select(Bounds framed, boolean more) {
        Set<String> chosen =
                new LinkedHashSet<>(more ? session.selection().units().get() : Set.of());
        chosen.addAll(Framed.units(viewpoint.now(), showing.picker(session), framed));
        session.selection().set(chosen);
    }

    private void moved(MouseEvent event) {
        Eye eye = viewpoint.now();
        pointed = showing.picker(session)
                .any(eye.ray(event.getX(), event.getY()))
                .map(Hit::place)
                .orElse(null);
        hover(unit(event).map(Hit::unit).orElse(null));
        Spot pointer = new Spot(event.getX() / ScreenCanvas.PIXELS, event.getY() / ScreenCanvas.PIXELS);
        rest.setOnFinished(done -> {
            naming = hovered == null ? null : pointer;
            redraw.run();
        });
        rest.playFromStart();
    }

    private void hover(@Nullable String unit) {
        boolean change = !java.util.Objects.equals(unit, hovered) || naming != null;
        hovered = unit;
        naming = null;
        if (unit == null) {
            rest.stop();
        }
        if (change) {
            redraw.run();
        }
    }

    private void key(KeyEvent event) {
        if (event.getCode() != KeyCode.ESCAPE) {
            return;
        }
        if (grip != null || frame != null) {
            if (grip != null) {
                grip.cancel();
            }
            end();
            event.consume();
        } else if (begun != null || showing.measuring().get()) {
            begun = null;
            showing.measuring().set(false);
            event.consume();
        }
    }

    private void end() {
        press = null;
        pressed = null;
        grip = null;
        frame = null;
        redraw.run();
    }

    private Optional<Hit> unit(MouseEvent event) {
        return showing.picker(session).unit(viewpoint.now().ray(event.getX(), event.getY()));
    }
}
