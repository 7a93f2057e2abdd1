package org.shelterwright.app.desk.space;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.RotateEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.catalog.space.Box;

/**
 * Turning, shifting and enlarging the view. The second button turns about what lies under it, the middle one shifts, the
 * wheel enlarges about the pointer; on a touchpad Alt turns and Shift shifts with the first button, two fingers pinch.
 */
public final class Steering {
    private static final double DEGREES = 0.35;
    private static final double WHEEL = 1.0016;

    private final Viewpoint viewpoint;
    private final Function<Ray, Optional<Point3D>> met;
    private final Supplier<Point3D> middle;
    private final boolean turning;
    private @Nullable Point2D last;
    private @Nullable Point3D pivot;

    /** @param turning whether the view can be turned; if not, what would turn it shifts it */
    public Steering(Viewpoint viewpoint, Showing showing, Session session, Region pane, boolean turning) {
        this(viewpoint, ray -> showing.picker(session).unit(ray).map(Hit::place), () -> middle(session), pane, turning);
    }

    /**
     * @param met where a line of sight first meets something (mm): what the view turns about
     * @param middle what it turns about otherwise (mm)
     */
    public Steering(
            Viewpoint viewpoint,
            Function<Ray, Optional<Point3D>> met,
            Supplier<Point3D> middle,
            Region pane,
            boolean turning) {
        this.viewpoint = viewpoint;
        this.met = met;
        this.middle = middle;
        this.turning = turning;
        pane.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        pane.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        pane.addEventHandler(MouseEvent.MOUSE_RELEASED, event -> last = null);
        pane.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
        pane.addEventHandler(ZoomEvent.ZOOM, event -> zoom(event.getX(), event.getY(), event.getZoomFactor()));
        pane.addEventHandler(RotateEvent.ROTATE, this::rotated);
    }

    private void pressed(MouseEvent event) {
        if (turns(event) || shifts(event)) {
            last = new Point2D(event.getX(), event.getY());
            Eye eye = viewpoint.now();
            pivot = met.apply(eye.ray(event.getX(), event.getY())).orElseGet(middle);
        }
    }

    private void dragged(MouseEvent event) {
        Point2D from = last;
        Point3D about = pivot;
        if (from == null || about == null) {
            return;
        }
        Eye eye = viewpoint.now();
        double dx = event.getX() - from.getX();
        double dy = event.getY() - from.getY();
        if (!turning || shifts(event)) {
            viewpoint.set(eye.panned(dx, dy));
        } else {
            viewpoint.set(eye.orbited(about, eye.azimuth() + dx * DEGREES, eye.height() + dy * DEGREES));
        }
        last = new Point2D(event.getX(), event.getY());
    }

    private void scrolled(ScrollEvent event) {
        if (event.isShiftDown()) {
            viewpoint.set(viewpoint.now().panned(event.getDeltaX() + event.getDeltaY(), 0));
        } else {
            zoom(event.getX(), event.getY(), Math.pow(WHEEL, event.getDeltaY()));
        }
    }

    private void zoom(double x, double y, double factor) {
        viewpoint.set(viewpoint.now().zoomed(x, y, factor));
    }

    private void rotated(RotateEvent event) {
        if (!turning) {
            return;
        }
        Eye eye = viewpoint.now();
        viewpoint.set(eye.orbited(middle.get(), eye.azimuth() - event.getAngle(), eye.height()));
    }

    private static Point3D middle(Session session) {
        Box in = session.now().scene().body().inside().box();
        return new Point3D(in.x1() / 2e3, in.y1() / 2e3, in.z1() / 4e3);
    }

    private static boolean turns(MouseEvent event) {
        return event.isSecondaryButtonDown() || event.isPrimaryButtonDown() && event.isAltDown();
    }

    private static boolean shifts(MouseEvent event) {
        return event.isMiddleButtonDown()
                || event.getButton() == MouseButton.PRIMARY && event.isAltDown() && event.isShiftDown();
    }
}
