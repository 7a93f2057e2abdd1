package org.shelterwright.app.desk.space.measure;

import java.util.Comparator;
import java.util.List;
import javafx.geometry.Point3D;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.Block;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * One end of a distance: a corner, or a place on a face.
 *
 * @param at exact place (µm)
 * @param face the face that it lies on; {@code null} if it is a corner
 */
public record Mark(Point at, @Nullable Face face) {
    /** How near the pointer must be to a corner to mean it (px). */
    private static final double NEAR = 10;

    /** What is meant by pointing at a place of the view. */
    public static Mark of(Hit hit, Eye eye) {
        Spot pointer = eye.project(hit.place()).spot();
        List<Point> corners = Block.corners(hit.solid(), hit.face());
        Point nearest = corners.stream()
                .min(Comparator.comparingDouble(corner -> spot(corner, eye).distance(pointer)))
                .orElseThrow();
        return spot(nearest, eye).distance(pointer) <= NEAR
                ? new Mark(nearest, null)
                : new Mark(onFace(hit.place(), hit.solid(), hit.face()), hit.face());
    }

    private static Point onFace(Point3D place, Box solid, Face face) {
        int at = face.sign() > 0 ? solid.high(face.axis()) : solid.low(face.axis());
        return new Point(um(place.getX()), um(place.getY()), um(place.getZ())).with(face.axis(), at);
    }

    private static Spot spot(Point point, Eye eye) {
        return eye.project(new Point3D(point.x() / 1e3, point.y() / 1e3, point.z() / 1e3))
                .spot();
    }

    private static int um(double mm) {
        return (int) Math.round(mm) * 1000;
    }
}
