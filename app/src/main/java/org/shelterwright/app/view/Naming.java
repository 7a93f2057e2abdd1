package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Names on the tops of units where they fit in full sight; a ringed number on whatever of the unit is seen where they do
 * not. Numbers count the units of the brief from 1, as the parts list does.
 */
final class Naming {

    private static final double FINENESS = 2;
    private static final double NAME = 2.9;
    private static final double NUMBER = 2.6;
    private static final double RING = 2.3;
    private static final double STEP = 0.5;

    private final Typeface typeface;
    private final Projection projection;
    private final DepthBuffer buffer;
    private int faces;
    private final Map<String, List<Integer>> tops = new LinkedHashMap<>();
    private final Map<String, List<Integer>> all = new LinkedHashMap<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final Map<Integer, String> key = new LinkedHashMap<>();

    /**
     * @param width of the picture on paper (mm)
     * @param height of the picture on paper (mm)
     */
    Naming(Typeface typeface, Projection projection, double width, double height, PictureModel model) {
        this.typeface = typeface;
        this.projection = projection;
        this.buffer = new DepthBuffer((int) Math.ceil(width * FINENESS), (int) Math.ceil(height * FINENESS));
        model.shell().forEach(this::put);
        model.blocks().forEach(this::put);
    }

    /** Names the units in the order of the brief. */
    void name(List<PlacedUnit> units, Map<String, Integer> numbers) {
        for (PlacedUnit unit : units) {
            int number = numbers.getOrDefault(unit.id(), 0);
            if (!named(unit)) {
                ring(unit, number);
                key.put(number, unit.name());
            }
        }
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** The names of the numbered units. */
    Map<Integer, String> key() {
        return key;
    }

    private void put(Block block) {
        for (Face face : Block.seen(projection.view())) {
            int id = faces++;
            if (face == Face.TOP) {
                tops.computeIfAbsent(block.owner(), owner -> new ArrayList<>()).add(id);
            }
            all.computeIfAbsent(block.owner(), owner -> new ArrayList<>()).add(id);
            List<Point> corners = Block.corners(block.box(), face);
            buffer.put(
                    corners.stream()
                            .map(projection::spot)
                            .map(spot -> new Spot(spot.x() * FINENESS, spot.y() * FINENESS))
                            .toList(),
                    corners.stream().mapToDouble(projection.view()::depth).toArray(),
                    id);
        }
    }

    private boolean named(PlacedUnit unit) {
        double width = typeface.width(unit.name(), NAME, Weight.MEDIUM);
        Optional<Spot> middle = place(tops.getOrDefault(unit.id(), List.of()), width + 1.6, NAME + 0.6);
        middle.ifPresent(spot -> shapes.add(new Label(
                unit.name(),
                spot.plus(0, NAME * Typeface.CAPITAL / 2),
                NAME,
                Weight.MEDIUM,
                Align.MIDDLE,
                0,
                Role.ON_TOP.colour())));
        return middle.isPresent();
    }

    private void ring(PlacedUnit unit, int number) {
        double width = 2 * RING + 0.4;
        place(all.getOrDefault(unit.id(), List.of()), width, width).ifPresent(spot -> {
            shapes.add(new Circle(spot, RING, Role.RAISED.colour(), Pen.of(0.28, Role.TEXT.colour())));
            shapes.add(new Label(
                    Integer.toString(number),
                    spot.plus(0, NUMBER * Typeface.CAPITAL / 2),
                    NUMBER,
                    Weight.SEMIBOLD,
                    Align.MIDDLE,
                    0,
                    Role.TEXT.colour()));
        });
    }

    /** The place nearest to the middle of one of the faces where a rectangle lies on that face in full sight. */
    private Optional<Spot> place(List<Integer> candidates, double width, double height) {
        for (int id : candidates) {
            List<Spot> seen = seen(id);
            if (seen.isEmpty()) {
                continue;
            }
            double x = seen.stream().mapToDouble(Spot::x).average().orElse(0);
            double y = seen.stream().mapToDouble(Spot::y).average().orElse(0);
            Spot middle = new Spot(x, y);
            Spot best = null;
            for (Spot spot : seen) {
                boolean nearer = best == null || spot.distance(middle) < best.distance(middle) - 1e-9;
                if (nearer && lies(Bounds.around(spot, width, height), id)) {
                    best = spot;
                }
            }
            if (best != null) {
                return Optional.of(best);
            }
        }
        return Optional.empty();
    }

    private List<Spot> seen(int id) {
        List<Spot> seen = new ArrayList<>();
        for (int y = 0; y < buffer.height(); y++) {
            for (int x = 0; x < buffer.width(); x++) {
                if (buffer.id(x, y) == id) {
                    seen.add(new Spot((x + 0.5) / FINENESS, (y + 0.5) / FINENESS));
                }
            }
        }
        return seen;
    }

    private boolean lies(Bounds bounds, int id) {
        for (double y = bounds.y0(); y <= bounds.y1(); y += STEP) {
            for (double x = bounds.x0(); x <= bounds.x1(); x += STEP) {
                int px = (int) (x * FINENESS);
                int py = (int) (y * FINENESS);
                if (px < 0 || py < 0 || px >= buffer.width() || py >= buffer.height() || buffer.id(px, py) != id) {
                    return false;
                }
            }
        }
        return true;
    }
}
