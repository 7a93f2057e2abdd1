package org.shelterwright.app.desk.space.solid;

import java.util.Arrays;
import java.util.List;
import javafx.geometry.Point3D;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Point;

/**
 * Lines in space as thin quads that face the viewer, as wide on the screen as their pens say at any zoom. Needs no window.
 *
 * <p>Cost: linear in the lines and their dashes.
 */
final class Strokes {
    /** Pixels for a millimetre of a pen, as in what lies over the scene. */
    static final double PIXELS = ScreenCanvas.PIXELS;

    /** How far a line lies before the face that bears it (mm). */
    private static final double NEARER = 8;

    /** The longest line that is dashed dash by dash (px); beyond it nobody could see them. */
    private static final double LONGEST = 20_000;

    private float[] points = new float[1024];
    private int[] cells = new int[128];
    private int count;

    /** Corners of the quads: four points of three figures each (mm). */
    float[] points() {
        return Arrays.copyOf(points, 12 * count);
    }

    /** Colour of a quad. */
    int cell(int quad) {
        return cells[quad];
    }

    int count() {
        return count;
    }

    /** What gives the colour of a pen its cell. */
    interface Cells {
        int of(Trace trace);
    }

    void lay(List<Trace> traces, Eye eye, Cells colours) {
        count = 0;
        for (Trace trace : traces) {
            lay(trace, eye, colours.of(trace));
        }
    }

    private void lay(Trace trace, Eye eye, int cell) {
        double half = trace.pen().width() * PIXELS / 2;
        double[] dashes = trace.pen().type().dashes(trace.pen().width() * PIXELS);
        double way = 0;
        List<Point> line = trace.points();
        for (int i = 0; i + 1 < line.size(); i++) {
            Point3D a = mm(line.get(i));
            Point3D b = mm(line.get(i + 1));
            Spot from = eye.project(a).spot();
            double length =
                    dashes.length == 0 ? 0 : from.distance(eye.project(b).spot());
            if (dashes.length == 0 || length > LONGEST) {
                quad(a, b, half, eye, cell, half);
                continue;
            }
            double period = Arrays.stream(dashes).sum();
            double at = -(way % period);
            for (int d = 0; at < length && length > 0; d = (d + 1) % dashes.length) {
                double end = at + dashes[d];
                if (d % 2 == 0 && end > 0) {
                    Point3D dashFrom = a.interpolate(b, Math.max(0, at) / length);
                    quad(dashFrom, a.interpolate(b, Math.min(length, end) / length), half, eye, cell, 0);
                }
                at = end;
            }
            way += length;
        }
    }

    private void quad(Point3D a, Point3D b, double half, Eye eye, int cell, double beyond) {
        Point3D middle = a.midpoint(b);
        Point3D sight = eye.towards(middle);
        Point3D along = b.subtract(a);
        Point3D across = along.crossProduct(sight);
        if (across.magnitude() < 1e-9) {
            return;
        }
        double mm = 1 / eye.scaleAt(middle);
        across = across.normalize().multiply(half * mm);
        Point3D end = sight.crossProduct(across).normalize().multiply(beyond * mm);
        Point3D lift = sight.multiply(NEARER);
        grow();
        int at = 12 * count;
        put(at, a.subtract(end).add(across).add(lift));
        put(at + 3, a.subtract(end).subtract(across).add(lift));
        put(at + 6, b.add(end).subtract(across).add(lift));
        put(at + 9, b.add(end).add(across).add(lift));
        cells[count++] = cell;
    }

    private void grow() {
        if (12 * count + 12 > points.length) {
            points = Arrays.copyOf(points, 2 * points.length);
        }
        if (count == cells.length) {
            cells = Arrays.copyOf(cells, 2 * cells.length);
        }
    }

    private void put(int at, Point3D point) {
        points[at] = (float) point.getX();
        points[at + 1] = (float) point.getY();
        points[at + 2] = (float) point.getZ();
    }

    private static Point3D mm(Point point) {
        return new Point3D(point.x() / 1e3, point.y() / 1e3, point.z() / 1e3);
    }
}
