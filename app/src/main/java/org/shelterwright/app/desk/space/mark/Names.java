package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import javafx.geometry.Point3D;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.app.desk.space.pick.Picker;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Block;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Names of units where they lie in full sight on a face of the unit: on its top, or on a side when the view is too flat for
 * tops; in one line or else in two. A name that fits nowhere is left out.
 */
final class Names {
    private static final double SIZE = 11.5;

    /** From line to line, in heights of the em. */
    private static final double LINE = 1.05;

    /** Elevation (degrees) below which names lie on sides. */
    private static final double FLAT = 12;

    private static final double[][] TRIES = {
        {0.5, 0.5},
        {0.5, 0.3},
        {0.5, 0.7},
        {0.3, 0.5},
        {0.7, 0.5},
        {0.3, 0.3},
        {0.7, 0.7},
        {0.3, 0.7},
        {0.7, 0.3},
        {0.5, 0.15},
        {0.5, 0.85},
        {0.18, 0.5},
        {0.82, 0.5}
    };

    private final Glass glass;
    private final Typeface typeface;
    private final Picker picker;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Bounds> taken = new ArrayList<>();
    private final List<Bounds> covers = new ArrayList<>();

    /** @param covered where no name may lie */
    Names(Glass glass, Typeface typeface, Picker picker, List<Bounds> covered) {
        this.glass = glass;
        this.typeface = typeface;
        this.picker = picker;
        taken.addAll(covered);
        for (PlacedUnit unit : picker.scene().units()) {
            covers.add(cover(unit));
        }
    }

    /** The rectangle that the solids of a unit cover at most. */
    private Bounds cover(PlacedUnit unit) {
        List<Box> solids = unit.solids(picker.situation());
        return solids.isEmpty()
                ? new Bounds(0, 0, 0, 0)
                : Bounds.of(solids.stream()
                        .flatMap(box -> glass.spots(Block.corners(box)).stream())
                        .toList());
    }

    void name(List<PlacedUnit> units, Predicate<String> asked) {
        for (PlacedUnit unit : units) {
            if (asked.test(unit.id())) {
                name(unit);
            }
        }
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** What the names cover. */
    List<Bounds> taken() {
        return taken;
    }

    private void name(PlacedUnit unit) {
        double size = glass.sized(SIZE);
        for (List<String> lines : wraps(unit.name())) {
            double widest = lines.stream()
                    .mapToDouble(line -> typeface.width(line, size, Weight.MEDIUM))
                    .max()
                    .orElse(0);
            double width = widest + size * 0.4;
            double height = size * LINE * lines.size();
            Spot spot = place(unit, width, height);
            if (spot != null) {
                taken.add(Bounds.around(spot, width, height));
                write(lines, spot, size);
                return;
            }
        }
    }

    private void write(List<String> lines, Spot centre, double size) {
        for (int i = 0; i < lines.size(); i++) {
            double down = (i - (lines.size() - 1) / 2.0) * size * LINE + size * Typeface.CAPITAL / 2;
            shapes.add(new Label(
                    lines.get(i), centre.plus(0, down), size, Weight.MEDIUM, Align.MIDDLE, 0, Role.ON_TOP.colour()));
        }
    }

    /** A name in one line, in the two lines that are least wide, and, of one that is counted, its last word with its number. */
    static List<List<String>> wraps(String name) {
        List<List<String>> wraps = new ArrayList<>(List.of(List.of(name)));
        String[] words = name.split(" ");
        if (words.length > 1) {
            List<String> best = List.of();
            for (int i = 1; i < words.length; i++) {
                List<String> two = List.of(
                        String.join(" ", Arrays.copyOfRange(words, 0, i)),
                        String.join(" ", Arrays.copyOfRange(words, i, words.length)));
                if (best.isEmpty() || longest(two) < longest(best)) {
                    best = two;
                }
            }
            wraps.add(best);
        }
        if (words.length > 2 && words[words.length - 1].matches("\\d+")) {
            wraps.add(List.of(words[words.length - 2] + " " + words[words.length - 1]));
        }
        return wraps;
    }

    private static int longest(List<String> lines) {
        return lines.stream().mapToInt(String::length).max().orElse(0);
    }

    private @Nullable Spot place(PlacedUnit unit, double width, double height) {
        List<Box> solids = new ArrayList<>(unit.solids(picker.situation()));
        boolean flat = glass.eye().height() < FLAT;
        solids.sort(Comparator.comparingDouble((Box box) -> -area(box, flat)));
        for (Box solid : solids) {
            for (Face face : Block.seen(glass.eye().axonometry())) {
                if ((face == Face.TOP) != flat) {
                    Spot found = on(unit, Block.corners(solid, face), width, height);
                    if (found != null) {
                        return found;
                    }
                }
            }
        }
        return null;
    }

    private @Nullable Spot on(
            PlacedUnit unit, List<org.shelterwright.catalog.space.Point> corners, double width, double height) {
        Bounds face = Bounds.of(glass.spots(corners));
        if (face.width() < width || face.height() < height) {
            return null;
        }
        Point3D o = Glass.mm(corners.get(0));
        Point3D u = Glass.mm(corners.get(1)).subtract(o);
        Point3D v = Glass.mm(corners.get(3)).subtract(o);
        for (double[] share : TRIES) {
            Spot spot = glass.spot(o.add(u.multiply(share[0])).add(v.multiply(share[1])));
            Bounds bounds = Bounds.around(spot, width, height);
            boolean free = face.contains(bounds)
                    && glass.bounds().contains(bounds)
                    && taken.stream().noneMatch(bounds::overlaps);
            if (free && inSight(unit, bounds)) {
                return spot;
            }
        }
        return null;
    }

    /** Whether the rectangle lies on the unit alone: looked at in its corners and along its middle. */
    private boolean inSight(PlacedUnit unit, Bounds b) {
        List<PlacedUnit> near = near(b);
        Face first = null;
        for (int i = 0; i <= 4; i++) {
            for (int j = 0; j <= 2; j++) {
                double x = b.x0() + b.width() * i / 4;
                double y = b.y0() + b.height() * j / 2;
                Ray ray = glass.eye().ray(x * ScreenCanvas.PIXELS, y * ScreenCanvas.PIXELS);
                Hit hit = picker.first(ray, near).orElse(null);
                if (hit == null || !hit.unit().equals(unit.id()) || first != null && hit.face() != first) {
                    return false;
                }
                first = hit.face();
            }
        }
        return true;
    }

    /** The units that may be met within a rectangle: of many, a name has to do with few. */
    private List<PlacedUnit> near(Bounds b) {
        Bounds grown = b.grown(1);
        List<PlacedUnit> units = picker.scene().units();
        List<PlacedUnit> near = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            if (covers.get(i).overlaps(grown)) {
                near.add(units.get(i));
            }
        }
        return near;
    }

    private static double area(Box box, boolean flat) {
        double x = (box.x1() - box.x0()) / 1e3;
        double y = (box.y1() - box.y0()) / 1e3;
        double z = (box.z1() - box.z0()) / 1e3;
        return flat ? Math.max(x, y) * z : x * y + box.z1() / 1e6;
    }
}
