package org.shelterwright.app.view;

import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.catalog.space.Point;

/**
 * Brings places of a body onto paper.
 *
 * @param view from where it is seen
 * @param scale mm on paper for a µm of the body
 * @param dx shift on paper (mm)
 * @param dy shift on paper (mm)
 */
public record Projection(Axonometry view, double scale, double dx, double dy) implements Depiction {

    /** The largest projection that shows all points in the middle of a part of the paper. */
    public static Projection fitting(Axonometry view, List<Point> points, Bounds area) {
        Projection plain = new Projection(view, 1e-3, 0, 0);
        Bounds all = Bounds.of(points.stream().map(plain::spot).toList());
        double share = Math.min(area.width() / all.width(), area.height() / all.height());
        return new Projection(
                view,
                1e-3 * share,
                area.centre().x() - all.centre().x() * share,
                area.centre().y() - all.centre().y() * share);
    }

    @Override
    public Spot spot(Point point) {
        return new Spot(dx + view.across(point) * scale, dy - view.up(point) * scale);
    }

    public List<Spot> spots(List<Point> points) {
        return points.stream().map(this::spot).toList();
    }
}
