package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.TreeSet;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.ContainerSeat;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/** Finds the first free place on a deck by hand: along its middle from the rear, or on a free place for containers. */
final class FreeDeck {
    private FreeDeck() {}

    /** The low corner of a shape that looks forward; if nothing is free, the rear end of the deck. Cost: squared in what stands there. */
    static Point place(PlacedLoad load, Shape shape) {
        int y = Math.floorDiv(load.car().deck().width() - shape.size().y(), 2);
        TreeSet<Integer> places = new TreeSet<>();
        if (!shape.wheeled()) {
            load.car().seats().stream()
                    .filter(seat -> seat.length() == shape.size().x())
                    .map(ContainerSeat::x)
                    .forEach(places::add);
        }
        if (places.isEmpty()) {
            places.add(0);
            load.pieces().forEach(piece -> places.add(piece.box().x1()));
        }
        List<PlacedPiece> others = load.pieces().stream()
                .filter(piece -> !piece.id().equals(shape.id()))
                .toList();
        for (int x : places) {
            Box there = shape.size().box().moved(new Point(x, y, 0));
            boolean fits = there.x1() <= load.car().deck().length();
            if (fits && others.stream().noneMatch(other -> overlaps(other.box(), there))) {
                return new Point(x, y, 0);
            }
        }
        return new Point(0, y, 0);
    }

    private static boolean overlaps(Box one, Box other) {
        return one.gap(other, Axis.X) < 0 && one.gap(other, Axis.Y) < 0 && one.gap(other, Axis.Z) < 0;
    }
}
