package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A solid as it is shown.
 *
 * @param owner id of the unit that it belongs to; empty if it belongs to the body
 * @param traces detail drawn on its faces
 */
public record Block(String owner, Box box, Shade shade, List<Trace> traces) {

    public Block {
        traces = List.copyOf(traces);
    }

    /** The corners of a face, in order around it. */
    public static List<Point> corners(Box box, Face face) {
        Axis u = face.axis() == Axis.X ? Axis.Y : Axis.X;
        Axis v = face.axis() == Axis.Z ? Axis.Y : Axis.Z;
        Point base = box.low().with(face.axis(), face.sign() > 0 ? box.high(face.axis()) : box.low(face.axis()));
        Point far = base.with(u, box.high(u));
        return List.of(base, far, far.with(v, box.high(v)), base.with(v, box.high(v)));
    }

    /** All eight corners. */
    public static List<Point> corners(Box box) {
        List<Point> corners = new ArrayList<>(corners(box, Face.BOTTOM));
        corners.addAll(corners(box, Face.TOP));
        return corners;
    }

    /** The faces that look towards the viewer. */
    public static List<Face> seen(Axonometry view) {
        List<Face> seen = new ArrayList<>();
        for (Face face : Face.values()) {
            if (view.sees(face)) {
                seen.add(face);
            }
        }
        return seen;
    }
}
