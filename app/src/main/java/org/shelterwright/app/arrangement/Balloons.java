package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.view.FlatView;
import org.shelterwright.app.view.Weights;

/**
 * Item references in rings: on what is seen of a unit where a ring fits, else beside it with a leader that ends in a dot.
 *
 * <p>Source: ISO 6433:2012 (from memory): references in circles of one size, leaders that do not cross.
 */
final class Balloons {

    private static final double RADIUS = 3.2;
    private static final double CLEAR = 0.5;
    private static final double FARTHEST = 90;
    private static final int TURNS = 32;

    /** Where on a unit a leader may end, as shares of its width and height. */
    private static final List<Spot> DOTS = List.of(
            new Spot(0.5, 0.5),
            new Spot(0.2, 0.8),
            new Spot(0.8, 0.8),
            new Spot(0.2, 0.2),
            new Spot(0.8, 0.2),
            new Spot(0.5, 0.9),
            new Spot(0.5, 0.1));

    private final FreeSpace space;
    private final FlatView view;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    Balloons(FreeSpace space, FlatView view) {
        this.space = space;
        this.view = view;
    }

    /** Sets a ring for each unit that has room for one; those without are kept for {@link #setBeside}. */
    void setOn(Map<String, Integer> numbers) {
        numbers.forEach((unit, number) -> {
            if (!on(unit, number)) {
                left.add(unit);
            }
        });
    }

    /**
     * Sets a ring with a leader for each unit that had no room.
     *
     * @param walls where rings stand only if there is no other place
     */
    void setBeside(Map<String, Integer> numbers, List<Bounds> walls) {
        for (String unit : left) {
            int number = numbers.getOrDefault(unit, 0);
            if (!beside(unit, number, walls)) {
                beside(unit, number, List.of());
            }
        }
    }

    Shape shape() {
        return new Group("item references", shapes);
    }

    private boolean on(String unit, int number) {
        double size = 2 * (RADIUS + CLEAR);
        Spot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Bounds part : view.parts(unit)) {
            for (double y = part.y0() + size / 2; y <= part.y1() - size / 2; y += 0.5) {
                for (double x = part.x0() + size / 2; x <= part.x1() - size / 2; x += 0.5) {
                    Spot spot = new Spot(x, y);
                    Bounds bounds = Bounds.around(spot, size, size);
                    double distance = spot.distance(part.centre());
                    if (distance < least - 1e-9 && space.free(bounds) && view.shows(bounds, unit)) {
                        best = spot;
                        least = distance;
                    }
                }
            }
        }
        if (best != null) {
            ring(best, number);
        }
        return best != null;
    }

    private boolean beside(String unit, int number, List<Bounds> walls) {
        List<Bounds> parts = view.parts(unit);
        boolean set = parts.isEmpty()
                || DOTS.stream().anyMatch(at -> {
                    Bounds part = parts.get(0);
                    Spot dot = new Spot(part.x0() + at.x() * part.width(), part.y0() + at.y() * part.height());
                    return beside(dot, number, walls);
                });
        if (set && !parts.isEmpty() && !seen(unit, parts)) {
            shapes.add(Polygon.of(parts.get(0), null, Weights.HIDDEN));
        }
        return set;
    }

    private boolean seen(String unit, List<Bounds> parts) {
        return parts.stream().anyMatch(part -> view.shows(Bounds.around(part.centre(), 1, 1), unit));
    }

    /** Sets a ring as near as it can be to the dot at the end of its leader. */
    private boolean beside(Spot dot, int number, List<Bounds> walls) {
        double size = 2 * (RADIUS + CLEAR);
        for (double way = RADIUS + 2; way < FARTHEST; way += 2) {
            for (int turn = 0; turn < TURNS; turn++) {
                double angle = 2 * Math.PI * (turn + 0.5) / TURNS;
                Spot spot = dot.plus(way * Math.cos(angle), -way * Math.sin(angle));
                Bounds bounds = Bounds.around(spot, size, size);
                Spot end = spot.towards(dot, RADIUS / way);
                if (space.free(bounds)
                        && walls.stream().noneMatch(bounds::overlaps)
                        && !view.onBlock(bounds)
                        && space.free(dot, end)) {
                    shapes.add(Lines.of(Weights.THIN, dot, end));
                    shapes.add(new Circle(dot, 0.6, Role.TEXT.colour(), null));
                    space.take(dot, end);
                    ring(spot, number);
                    return true;
                }
            }
        }
        return false;
    }

    private void ring(Spot spot, int number) {
        shapes.add(new Circle(spot, RADIUS, Role.RAISED.colour(), Weights.VISIBLE));
        shapes.add(Lettering.of(Integer.toString(number), spot.plus(0, 1.25), 2.5)
                .with(Align.MIDDLE)
                .with(Weight.MEDIUM));
        space.take(Bounds.around(spot, 2 * RADIUS, 2 * RADIUS));
    }
}
