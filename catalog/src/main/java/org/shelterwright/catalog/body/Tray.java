package org.shelterwright.catalog.body;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * A cable tray or duct.
 *
 * @param path its centre line, in the frame of the body; at least two points, each section along one axis
 * @param width inside width (µm)
 * @param depth inside depth (µm)
 * @param classes classes of cables that may lie in it
 * @param compartments its parts between separators, from right to left or from the rear to the front; empty: it has none
 * @param closed whether it is a duct that cables are pulled through, entered at its ends only
 * @param screened whether it is of metal with solid walls, bonded, so that what lies in it is screened from what lies beside
 * @param length what a cable takes from end to end, where that is not the length of the path (µm); {@code null}: it is
 */
public record Tray(
        String name,
        List<Point> path,
        @Millimetres int width,
        @Millimetres int depth,
        List<CableClass> classes,
        List<Compartment> compartments,
        boolean closed,
        boolean screened,
        @Nullable @Millimetres Integer length) {
    public Tray {
        path = List.copyOf(path);
        classes = List.copyOf(classes);
        compartments = List.copyOf(compartments);
        if (path.size() < 2) {
            throw new IllegalArgumentException("The tray \"" + name + "\" needs at least two points.");
        }
        if (width <= 0 || depth <= 0) {
            throw new IllegalArgumentException("The tray \"" + name + "\" must have a width and a depth, but is "
                    + Lengths.format(width) + " x " + Lengths.format(depth) + " mm.");
        }
        for (int i = 1; i < path.size(); i++) {
            requireAlongAnAxis(name, path.get(i - 1), path.get(i));
        }
        int shared = compartments.stream().mapToInt(Compartment::width).sum();
        if (shared > width) {
            throw new IllegalArgumentException("The compartments of tray \"" + name + "\" take "
                    + Lengths.format(shared) + " mm of its width of " + Lengths.format(width)
                    + " mm. Correct one of them.");
        }
        if (length != null && length <= 0) {
            throw new IllegalArgumentException("The length of tray \"" + name + "\" must be above zero, but is "
                    + Lengths.format(length) + " mm.");
        }
    }

    /** An open tray without separators. */
    public Tray(
            String name, List<Point> path, @Millimetres int width, @Millimetres int depth, List<CableClass> classes) {
        this(name, path, width, depth, classes, List.of(), false, false, null);
    }

    /** Its compartments; the whole of it if there is no separator. */
    public List<Compartment> parts() {
        return compartments.isEmpty() ? List.of(new Compartment(width, classes)) : compartments;
    }

    /** The numbers of the compartments in which a class may lie, from zero. */
    public List<Integer> partsFor(CableClass cableClass) {
        List<Compartment> parts = parts();
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).classes().contains(cableClass)) {
                found.add(i);
            }
        }
        return found;
    }

    /** Inside cross-section of a compartment (mm²). */
    public double areaMm2(int part) {
        return parts().get(part).width() / 1000.0 * (depth / 1000.0);
    }

    private static void requireAlongAnAxis(String name, Point a, Point b) {
        int off = 0;
        for (Axis axis : Axis.values()) {
            off += a.along(axis) == b.along(axis) ? 0 : 1;
        }
        if (off != 1) {
            throw new IllegalArgumentException("Each section of tray \"" + name
                    + "\" must run along one axis, from one point to another, but one "
                    + (off == 0 ? "ends where it begins." : "runs across."));
        }
    }
}
