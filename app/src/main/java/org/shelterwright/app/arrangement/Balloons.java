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

    /** Sets a ring with a leader for each unit that had no room. */
    void setBeside(Map<String, Integer> numbers) {
        for (String unit : left) {
            beside(unit, numbers.getOrDefault(unit, 0));
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

    private void beside(String unit, int number) {
        List<Bounds> parts = view.parts(unit);
        if (parts.isEmpty()) {
            return;
        }
        Spot dot = parts.get(0).centre();
        double size = 2 * (RADIUS + CLEAR);
        for (double way = RADIUS + 2; way < FARTHEST; way += 2) {
            for (int turn = 0; turn < TURNS; turn++) {
                double angle = 2 * Math.PI * (turn + 0.5) / TURNS;
                Spot spot = dot.plus(way * Math.cos(angle), -way * Math.sin(angle));
                Bounds bounds = Bounds.around(spot, size, size);
                Spot end = spot.towards(dot, RADIUS / way);
                if (space.free(bounds) && !view.onBlock(bounds) && space.free(dot, end)) {
                    shapes.add(Lines.of(Weights.THIN, dot, end));
                    shapes.add(new Circle(dot, 0.6, Role.TEXT.colour(), null));
                    space.take(dot, end);
                    ring(spot, number);
                    return;
                }
            }
        }
    }

    private void ring(Spot spot, int number) {
        shapes.add(new Circle(spot, RADIUS, Role.RAISED.colour(), Weights.VISIBLE));
        shapes.add(Lettering.of(Integer.toString(number), spot.plus(0, 1.25), 2.5)
                .with(Align.MIDDLE)
                .with(Weight.MEDIUM));
        space.take(Bounds.around(spot, 2 * RADIUS, 2 * RADIUS));
    }
}
