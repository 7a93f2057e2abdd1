package org.shelterwright.catalog.transit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * A row of anchor points along a car, or one by itself.
 *
 * @param first the rearmost, in the frame of the car
 * @param pitch between neighbours, along x (µm)
 * @param ratingN load that each bears in any direction (N); {@code null} if not known
 */
public record AnchorRow(
        String name,
        Point first,
        @Millimetres int pitch,
        int count,
        @Nullable Double ratingN) {
    public AnchorRow {
        Figures.within("number of points of anchor row " + name, count, 1, 200);
        if (count > 1 && pitch <= 0) {
            throw new IllegalArgumentException("The anchor row " + name + " of " + count + " points needs a pitch.");
        }
    }

    /** The points, numbered from the rear: "left 1", "left 2"...; one by itself keeps the name of the row. */
    public List<Provision> points() {
        List<Provision> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(new Provision(
                    count == 1 ? name : name + " " + (i + 1),
                    Provision.Use.TIE_DOWN,
                    first.plus(new Point(i * pitch, 0, 0)),
                    ratingN));
        }
        return points;
    }
}
