package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point3D;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Depiction;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * The pane over the space, in millimetres of the drawing model.
 *
 * @param text size of text against 100 %
 */
public record Glass(Eye eye, double text) implements Depiction {
    @Override
    public Spot spot(Point point) {
        return spot(mm(point));
    }

    /** Where a place (mm of the body) lies. */
    public Spot spot(Point3D place) {
        Eye.Seen seen = eye.project(place);
        return new Spot(seen.x() / ScreenCanvas.PIXELS, seen.y() / ScreenCanvas.PIXELS);
    }

    /** The whole pane. */
    public Bounds bounds() {
        return new Bounds(0, 0, eye.width() / ScreenCanvas.PIXELS, eye.high() / ScreenCanvas.PIXELS);
    }

    /** A size of text or a distance that is given in pixels at 100 %. */
    public double sized(double px) {
        return px * text / ScreenCanvas.PIXELS;
    }

    public Bounds bounds(Box box) {
        return Bounds.of(spots(Block.corners(box)));
    }

    public List<Spot> spots(List<Point> points) {
        return points.stream().map(this::spot).toList();
    }

    /** The outline of cuboids in the picture: the convex hull of their corners, anticlockwise on paper. */
    public List<Spot> hull(List<Box> boxes) {
        List<Point> corners = new ArrayList<>();
        boxes.forEach(box -> corners.addAll(Block.corners(box)));
        return Hull.of(spots(corners));
    }

    static Point3D mm(Point point) {
        return new Point3D(point.x() / 1e3, point.y() / 1e3, point.z() / 1e3);
    }
}
