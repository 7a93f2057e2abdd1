package org.shelterwright.app.desk.transport;

import java.util.Optional;
import javafx.geometry.Point3D;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Finds what a line of sight meets first on a car. Cost: linear in the solids. */
final class DeckPicker {
    private DeckPicker() {}

    /** @param place where it is met (mm, frame of the car) */
    record Met(PlacedPiece piece, Point3D place) {}

    static Optional<Met> first(PlacedLoad load, Ray ray) {
        Met nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (PlacedPiece piece : load.pieces()) {
            for (Box solid : piece.solids()) {
                Optional<Point3D> place = ray.into(solid);
                double away = place.map(at -> at.distance(ray.origin())).orElse(Double.POSITIVE_INFINITY);
                if (place.isPresent() && away < least) {
                    least = away;
                    nearest = new Met(piece, place.get());
                }
            }
        }
        return Optional.ofNullable(nearest);
    }
}
