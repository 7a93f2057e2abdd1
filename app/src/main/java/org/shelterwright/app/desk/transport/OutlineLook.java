package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.space.solid.Thing;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.Step;
import org.shelterwright.layouts.ledger.transport.place.OutlineFit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * The outline of a leg's way about an open car: a fence at the section where it is tightest, with ticks on the forbidden side, and how it
 * narrows along the car where curves throw it.
 */
final class OutlineLook {
    private static final int STEP = 500_000;
    private static final int PITCH = 180_000;
    private static final int TICK = 110_000;
    private static final Pen FENCE = Pen.of(0.55, Role.FENCE.colour());
    private static final Pen TICKS = Pen.of(0.28, Role.FENCE.colour());
    private static final Pen ALONG = Pen.of(0.2, Role.FAINT.colour());

    private final LegScene leg;
    private final PlacedLoad load;
    private final Outline outline;
    private final int middle;
    private final int floor;
    private final List<Trace> traces = new ArrayList<>();

    private OutlineLook(LegScene leg, PlacedLoad load, Outline outline, int floor) {
        this.leg = leg;
        this.load = load;
        this.outline = outline;
        this.middle = load.car().deck().width() / 2;
        this.floor = floor;
    }

    /** The tightest place of all that stands on a car; empty if its way has no outline or nothing on it needs one. */
    static Optional<Tight> tightest(LegScene leg, PlacedLoad load) {
        Integer low = load.car().deck().lowest();
        Integer high = load.car().deck().highest();
        if (low == null || high == null || load.car().deck().clearHeight() != null) {
            return Optional.empty();
        }
        return load.pieces().stream()
                .flatMap(piece ->
                        OutlineFit.of(leg, load.car(), piece, low, high).map(fit -> new Tight(piece, fit)).stream())
                .min(Comparator.comparingInt(one -> one.fit().clearance()));
    }

    /** Where a piece is tightest in the outline. */
    record Tight(PlacedPiece piece, OutlineFit fit) {}

    /** @param at section of the fence (µm along the car); {@code null}: the front end of the deck */
    static Optional<Thing> of(LegScene leg, PlacedLoad load, String id, @Nullable Integer at) {
        Integer floor = load.car().deck().highest();
        Outline outline = leg.outline().orElse(null);
        if (floor == null || outline == null || load.car().deck().clearHeight() != null) {
            return Optional.empty();
        }
        OutlineLook look = new OutlineLook(leg, load, outline, floor);
        look.fence(at == null ? load.car().deck().length() : at);
        look.along();
        return Optional.of(new Thing(id, List.of(), List.of(), look.traces));
    }

    /** The upper part of the outline, from the floor up on one side and down on the other. */
    private void fence(int x) {
        List<Point> points = new ArrayList<>();
        List<Step> steps = outline.steps().stream()
                .filter(step -> step.height() > floor - 500_000)
                .toList();
        steps.forEach(step -> points.add(at(x, -step.halfWidth(), step.height())));
        for (int i = steps.size() - 1; i >= 0; i--) {
            points.add(at(x, steps.get(i).halfWidth(), steps.get(i).height()));
        }
        traces.add(new Trace(points, FENCE));
        for (int i = 0; i + 1 < points.size(); i++) {
            ticks(points.get(i), points.get(i + 1));
        }
    }

    private void ticks(Point a, Point b) {
        double dy = b.y() - (double) a.y();
        double dz = b.z() - (double) a.z();
        double length = Math.hypot(dy, dz);
        for (double way = PITCH / 2.0; way < length; way += PITCH) {
            double y = a.y() + dy * way / length;
            double z = a.z() + dz * way / length;
            // The forbidden side is to the left of the way up the right side, over the top and down.
            double ny = (-dz + dy) / length * Math.sqrt(0.5) * TICK;
            double nz = (dy + dz) / length * Math.sqrt(0.5) * TICK;
            traces.add(new Trace(
                    List.of(
                            new Point(a.x(), (int) Math.round(y), (int) Math.round(z)),
                            new Point(a.x(), (int) Math.round(y + ny), (int) Math.round(z + nz))),
                    TICKS));
        }
    }

    /** What is left of the outline after throw, along the car, at its shoulders and at its top. */
    private void along() {
        int length = load.car().deck().length();
        Step shoulder = outline.steps().stream()
                .max(Comparator.comparingInt(Step::halfWidth).thenComparingInt(Step::height))
                .orElseThrow();
        Step top = outline.steps().stream()
                .filter(step -> step.halfWidth() > 0)
                .max(Comparator.comparingInt(Step::height).thenComparingInt(Step::halfWidth))
                .orElse(shoulder);
        List<Step> steps = shoulder.equals(top) ? List.of(top) : List.of(shoulder, top);
        for (Step step : steps) {
            for (int side : new int[] {-1, 1}) {
                List<Point> line = new ArrayList<>();
                for (int x = 0; x < length + STEP; x += STEP) {
                    int place = Math.min(x, length);
                    int half = step.halfWidth() - OutlineFit.thrown(leg, load.car(), outline, place);
                    line.add(at(place, side * half, step.height()));
                }
                traces.add(new Trace(line, ALONG));
            }
        }
    }

    private Point at(int x, int off, int height) {
        return new Point(x, middle + off, height - floor);
    }
}
