package org.shelterwright.app.desk.space;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.Point3D;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.eye.EyeMove;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.DoorSwing;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/** Where the eye is, and how it gets to where it is sent. */
public final class Viewpoint {
    private static final double MARGIN = 56;
    private static final double LEAST_MARGIN = 16;
    private static final double NANOS = 1e6;

    private final Supplier<List<Point3D>> places;
    private final FixedView first;
    private final double mostMargin;
    private final ReadOnlyObjectWrapper<Eye> eye =
            new ReadOnlyObjectWrapper<>(new Eye(33, 37, Point3D.ZERO, 0.2, false, 800, 600));
    private Eye wanted = eye.get();
    private @Nullable EyeMove move;
    private long begun = -1;
    private boolean still;
    private boolean placed;

    /** Whether all is shown, so that it is to be shown as large as it can in a view of another size too. */
    private boolean whole;

    private double coveredTop;

    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            step(now);
        }
    };

    /** A view of the body of a layout. */
    public Viewpoint(Session session, FixedView first) {
        this(() -> places(session), first);
    }

    /**
     * A view of the body of a layout.
     *
     * @param margin around it if all is shown (px)
     */
    public Viewpoint(Session session, FixedView first, double margin) {
        this(() -> places(session), first, margin);
    }

    /** @param places what is to be seen if all is shown (mm), at least one */
    public Viewpoint(Supplier<List<Point3D>> places, FixedView first) {
        this(places, first, MARGIN);
    }

    private Viewpoint(Supplier<List<Point3D>> places, FixedView first, double margin) {
        this.places = places;
        this.first = first;
        mostMargin = margin;
        coveredTop = margin;
    }

    public ReadOnlyObjectProperty<Eye> eye() {
        return eye.getReadOnlyProperty();
    }

    public Eye now() {
        return eye.get();
    }

    /** Whether moves of the eye take no time. */
    public void reduceMotion(boolean reduced) {
        still = reduced;
    }

    public void set(Eye next) {
        stop();
        whole = false;
        wanted = next;
        eye.set(next);
    }

    /** Sends the eye to another view. */
    public void send(Eye next) {
        whole = false;
        if (still) {
            set(next);
            return;
        }
        move = new EyeMove(now(), next);
        begun = -1;
        timer.start();
    }

    /** The height that controls cover at the top (px). */
    public double coveredTop() {
        return coveredTop;
    }

    /** Says how far down controls lie over the view (px), so that they cover nothing of what is shown whole. */
    public void coverTop(double px) {
        coveredTop = px;
    }

    public void send(FixedView view) {
        Eye base = goal();
        send(below(view.of(above(base), places.get(), margin(base)), base));
        whole = true;
    }

    /** Shows the whole body from the same side. */
    public void showAll() {
        send(fitted(goal()));
        whole = true;
    }

    /** Brings cuboids into the middle, nearer if they are small. */
    public void show(List<Box> boxes) {
        List<Point3D> corners = new ArrayList<>();
        boxes.forEach(box -> Block.corners(box).forEach(corner -> corners.add(mm(corner))));
        if (!corners.isEmpty()) {
            Eye fitted = FixedView.fitted(goal(), corners, now().width() / 3.2);
            send(fitted);
        }
    }

    public void sized(double width, double high) {
        if (now().width() == width && now().high() == high) {
            return;
        }
        if (placed) {
            // From the eye as it was last chosen, so that a view that got smaller and larger again shows what it
            // showed.
            Eye chosen = goal().equals(now()) ? wanted : goal();
            if (whole) {
                boolean as = chosen.width() == width && chosen.high() == high;
                stop();
                eye.set(as ? chosen : fitted(chosen.sized(width, high)));
                wanted = chosen;
                return;
            }
            double share = Math.min(width / chosen.width(), high / chosen.high());
            stop();
            eye.set(chosen.sized(width, high).zoomed(width / 2, high / 2, share));
            wanted = chosen;
        } else if (width > 1 && high > 1) {
            placed = true;
            Eye base = now().sized(width, high);
            set(below(first.of(above(base), places.get(), margin(base)), base));
            whole = true;
        }
    }

    private Eye fitted(Eye base) {
        return below(FixedView.fitted(above(base), places.get(), margin(base)), base);
    }

    /** A small view has a small margin. */
    private double margin(Eye base) {
        return Math.max(LEAST_MARGIN, Math.min(mostMargin, 0.08 * Math.min(base.width(), base.high())));
    }

    /** The view without the height that controls cover beyond the margin. */
    private Eye above(Eye base) {
        double covered = Math.max(0, coveredTop - margin(base));
        return base.sized(base.width(), Math.max(2 * mostMargin + 1, base.high() - covered));
    }

    /** The view with its height again, its picture below the controls. */
    private static Eye below(Eye lower, Eye base) {
        double more = Math.max(0, base.high() - lower.high());
        return lower.sized(base.width(), base.high()).panned(0, more / 2);
    }

    /** Where the eye is, or will be when its move has ended. */
    public Eye goal() {
        return move == null ? now() : move.to();
    }

    private void step(long now) {
        EyeMove going = move;
        if (going == null) {
            stop();
            return;
        }
        begun = begun < 0 ? now : begun;
        double share = (now - begun) / NANOS / EyeMove.MILLIS;
        eye.set(going.at(share));
        wanted = now();
        if (share >= 1) {
            stop();
        }
    }

    private void stop() {
        move = null;
        timer.stop();
    }

    private static List<Point3D> places(Session session) {
        Box outside = session.now().scene().body().outside();
        Box in = session.now().scene().body().inside().box();
        Box shown = new Box(outside.x0(), outside.y0(), in.z0(), outside.x1(), outside.y1(), in.z1());
        List<Point3D> places = new ArrayList<>();
        Block.corners(shown).forEach(corner -> places.add(mm(corner)));
        Body body = session.now().scene().body();
        body.openings().stream()
                .filter(opening ->
                        opening.kind() == Opening.Kind.DOOR && opening.wall().upright() && opening.swing() == null)
                .forEach(door ->
                        DoorSwing.of(body, door).ifPresent(leaf -> leaf.arc().forEach(point -> places.add(mm(point)))));
        return places;
    }

    private static Point3D mm(Point point) {
        return new Point3D(point.x() / 1e3, point.y() / 1e3, point.z() / 1e3);
    }
}
