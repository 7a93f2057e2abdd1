package org.shelterwright.layouts.transport.scene;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Piece;

/** Makes the shapes of pieces. */
public final class Shapes {
    private Shapes() {}

    /**
     * The shape of a piece.
     *
     * @param layout that the piece is a part of; {@code null} of a crate
     * @throws IllegalArgumentException if the layout lacks the part
     */
    public static Shape of(Piece piece, @Nullable Layout layout, List<RuleSet> ruleSets) {
        Crate crate = piece.crate();
        if (crate != null) {
            return of(piece, crate);
        }
        Piece.Part part = piece.part();
        if (layout == null || part == null) {
            throw new IllegalArgumentException(
                    "The layout \"" + piece.layout() + "\" of piece \"" + piece.id() + "\" was not found.");
        }
        LayoutPart from = new LayoutPart(piece, layout, ruleSets);
        return switch (part) {
            case VEHICLE -> from.vehicle();
            case TRAILER -> from.trailer();
            case BODY -> from.body();
        };
    }

    private static Shape of(Piece piece, Crate crate) {
        Size size = crate.size();
        List<String> missing = new ArrayList<>();
        if (crate.massKg() == null) {
            missing.add(piece.name() + " has no mass. Give massKg of piece " + piece.id() + ".");
        }
        if (crate.centre() == null) {
            missing.add(piece.name() + " has no centre of mass. Give centre of piece " + piece.id() + ".");
        }
        Double range = crate.uncertaintyKg();
        return new Shape(
                piece.id(),
                piece.name(),
                size,
                List.of(size.box()),
                List.of(),
                new Rect(0, 0, size.x(), size.y()),
                crate.eyes(),
                crate.massKg(),
                range == null ? 0 : range,
                crate.centre(),
                crate.underside(),
                null,
                crate,
                missing);
    }

    /** The shape of a loaded container: its own mass in the middle of its size, and what is in it. */
    public static Shape of(PlacedLoad load) {
        TransitCar car = load.car();
        Size size = car.outside();
        if (size == null) {
            throw new IllegalArgumentException("The car \"" + car.id() + "\" of load \""
                    + load.load().id() + "\" cannot stand on another car: it has no outside size.");
        }
        Point floor = floor(car, size);
        double massKg = car.tareKg() + load.massKg();
        double x = car.tareKg() * size.x() / 2.0 + load.momentX() + load.massKg() * floor.x();
        double y = car.tareKg() * size.y() / 2.0 + load.momentY() + load.massKg() * floor.y();
        double z = car.tareKg() * size.z() / 2.0 + load.momentZ() + load.massKg() * floor.z();
        boolean known = load.unknown().isEmpty() && massKg > 0;
        return new Shape(
                load.load().id(),
                load.load().name(),
                size,
                List.of(size.box()),
                List.of(),
                new Rect(0, 0, size.x(), size.y()),
                List.<Provision>of(),
                known ? Double.valueOf(massKg) : null,
                load.uncertaintyKg(),
                known ? new Point(whole(x / massKg), whole(y / massKg), whole(z / massKg)) : null,
                Underside.PAINTED_METAL,
                null,
                null,
                load.unknown().map(List::of).orElse(List.of()));
    }

    /** Where the floor of a container lies in its outside size: in the middle; 50 mm are taken for its roof. */
    public static Point floor(TransitCar car, Size outside) {
        Integer clear = car.deck().clearHeight();
        int up = clear == null ? 0 : Math.max(0, outside.z() - clear - 50_000);
        return new Point(
                (outside.x() - car.deck().length()) / 2,
                (outside.y() - car.deck().width()) / 2,
                up);
    }

    static int whole(double value) {
        return (int) Math.round(value);
    }

    /** The least cuboid around cuboids. */
    static Box hull(List<Box> boxes) {
        return boxes.stream().reduce(Box::hull).orElseThrow();
    }
}
