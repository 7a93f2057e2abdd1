package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * A length of a deck with what stands on it.
 *
 * @param length along the car (µm)
 * @param x where it begins (µm)
 * @param wheeled whether it is a vehicle
 * @param stands of what is on it, for x = 0
 */
record Slab(int length, int x, boolean wheeled, List<Stand> stands) {
    Slab {
        stands = List.copyOf(stands);
    }

    static Slab fixed(PlacedPiece piece) {
        int x = piece.box().x0();
        Stand stand = piece.stand();
        return new Slab(
                piece.box().x1() - x,
                x,
                piece.shape().wheeled(),
                List.of(stand.with(stand.pose().moved(new Point(-x, 0, 0)))));
    }

    static Slab at(Shape shape, int x, int deckWidth) {
        return new Slab(
                shape.size().x(),
                x,
                false,
                List.of(DeckPlan.stand(shape, 0, (deckWidth - shape.size().y()) / 2)));
    }

    static Slab of(Shape shape, int deckWidth) {
        return new Slab(
                shape.size().x(),
                0,
                shape.wheeled(),
                List.of(DeckPlan.stand(shape, 0, (deckWidth - shape.size().y()) / 2)));
    }

    static Slab of(Row row, int deckWidth) {
        List<Stand> stands = new ArrayList<>();
        int y = (deckWidth - row.width()) / 2;
        for (Shape crate : row.crates()) {
            stands.add(DeckPlan.stand(crate, 0, y));
            y += crate.size().y();
        }
        return new Slab(row.length(), 0, false, stands);
    }

    /** The same elsewhere. */
    Slab movedTo(int place) {
        return new Slab(length, place, wheeled, stands);
    }

    /** Its stands where it is. */
    List<Stand> placed() {
        return stands.stream()
                .map(stand -> stand.with(stand.pose().moved(new Point(x, 0, 0))))
                .toList();
    }

    static List<Stand> placed(List<Slab> slabs) {
        return slabs.stream().flatMap(slab -> slab.placed().stream()).toList();
    }

    boolean overlaps(int from, int to) {
        return x < to && from < x + length;
    }
}
