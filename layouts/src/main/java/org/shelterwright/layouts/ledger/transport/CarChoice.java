package org.shelterwright.layouts.ledger.transport;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.transit.CategoryLoad;
import org.shelterwright.catalog.transit.Doorway;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** The nearest car that would take a load: of the same kind, by length, width, height, door and greatest load. */
public final class CarChoice {
    private CarChoice() {}

    /** What a load asks of a car, turned as it stands. */
    private record Asked(long length, int width, int height, double massKg) {}

    /** The greatest load of a car on a line category (kg); {@code null} if not known. */
    public static @Nullable Double loadLimitKg(TransitCar car, Optional<LineCategories.Category> category) {
        Double rated = car.ratedLoadKg();
        Double byLine = category.flatMap(line -> car.loadLimits().stream()
                        .filter(one -> one.category().equals(line.letter()))
                        .findFirst()
                        .or(() -> car.loadLimits().stream()
                                .filter(one -> one.category().compareTo(line.letter()) < 0)
                                .max(Comparator.comparing(CategoryLoad::category))))
                .map(CategoryLoad::loadKg)
                .orElse(null);
        if (rated == null || byLine == null) {
            return rated == null ? byLine : rated;
        }
        return Math.min(rated, byLine);
    }

    /**
     * One sentence that names the least car of the same kind that would take a load; empty if the present one would, or none does.
     */
    public static Optional<String> mend(LegScene leg, PlacedLoad load) {
        return nearest(leg, load)
                .map(car -> "Take the " + car.kind().word() + " \"" + car.name() + "\" (" + car.id() + ").");
    }

    /** The least car of the same kind that would take a load, other than the present one. */
    public static Optional<TransitCar> nearest(LegScene leg, PlacedLoad load) {
        Asked asked = asked(load);
        List<TransitCar> cars = leg.journey().parts().transit().cars();
        return cars.stream()
                .filter(car -> car.kind() == load.car().kind()
                        && !car.id().equals(load.car().id()))
                .filter(car -> takes(car, asked, leg))
                .min(Comparator.comparingLong((TransitCar car) -> car.deck().length())
                        .thenComparingDouble(car -> Objects.requireNonNullElse(car.ratedLoadKg(), 0.0))
                        .thenComparing(TransitCar::id));
    }

    private static Asked asked(PlacedLoad load) {
        int width = 0;
        int height = 0;
        for (PlacedPiece piece : load.pieces()) {
            width = Math.max(width, piece.box().y1() - piece.box().y0());
            height = Math.max(height, piece.box().z1());
        }
        long length = load.hull().map(hull -> (long) hull.x1() - hull.x0()).orElse(0L);
        return new Asked(length, width, height, load.massKg() + load.uncertaintyKg());
    }

    private static boolean takes(TransitCar car, Asked asked, LegScene leg) {
        Integer clear = car.deck().clearHeight();
        Double loadKg = loadLimitKg(car, leg.lineCategory());
        boolean open = clear == null;
        return asked.length() <= car.deck().length()
                && (open || asked.width() <= car.deck().width() && asked.height() <= clear)
                && (car.doorways().isEmpty() || car.doorways().stream().anyMatch(door -> passes(door, asked)))
                && loadKg != null
                && asked.massKg() <= loadKg;
    }

    private static boolean passes(Doorway door, Asked asked) {
        return asked.height() <= door.height()
                && (asked.width() <= door.width() || door.wall().axis() != Axis.X);
    }
}
