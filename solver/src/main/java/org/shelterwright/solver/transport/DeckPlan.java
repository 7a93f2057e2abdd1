package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.transit.ContainerSeat;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * Positions of everything on one car. Between walls crates are packed. On a deck everything stands in one line: vehicles and bodies each
 * by itself, crates in rows across; all orders are tried (at most 720), pinned things and container places keep their place, what is
 * between them is spaced evenly, and the order with the best balance that keeps the outline is taken.
 */
final class DeckPlan {
    private static final int MOST_ORDERED = 6;

    private final List<LegScene> legs;
    private final PlacedLoad load;
    private final CratePacker packer;
    private final long seed;

    DeckPlan(List<LegScene> legs, PlacedLoad load, CratePacker packer, long seed) {
        this.legs = legs;
        this.load = load;
        this.packer = packer;
        this.seed = seed;
    }

    Load planned() {
        if (load.pieces().stream().allMatch(piece -> piece.stand().pinned())) {
            return load.load();
        }
        boolean walls = load.car().deck().clearHeight() != null
                && load.pieces().stream().allMatch(piece -> piece.shape().crate() != null);
        return walls ? packed() : lined();
    }

    private Load packed() {
        Integer clear = load.car().deck().clearHeight();
        TransitCar car = load.car();
        Box space = new Box(0, 0, 0, car.deck().length(), car.deck().width(), clear == null ? 0 : clear);
        Double limit = CarChoice.loadLimitKg(car, legs.get(0).lineCategory());
        List<Shape> crates = load.pieces().stream().map(PlacedPiece::shape).toList();
        List<Stand> stands = new ArrayList<>(
                packer.pack(new CratePacker.Ask(car, space, crates, limit == null ? Double.MAX_VALUE : limit, seed)));
        int beyond = car.deck().length();
        for (Shape crate : crates) {
            if (stands.stream().noneMatch(stand -> stand.what().equals(crate.id()))) {
                stands.add(new Stand(crate.id(), Pose.at(new Point(beyond, 0, 0)), false));
                beyond += crate.size().x();
            }
        }
        return load.load().withStands(stands).withPacked(true);
    }

    private Load lined() {
        List<Slab> free = new ArrayList<>();
        List<Slab> fixed = new ArrayList<>();
        List<Shape> crates = new ArrayList<>();
        for (PlacedPiece piece : load.pieces()) {
            Optional<ContainerSeat> seat = seat(piece.shape(), fixed);
            if (piece.stand().pinned()) {
                fixed.add(Slab.fixed(piece));
            } else if (seat.isPresent()) {
                fixed.add(Slab.at(piece.shape(), seat.get().x(), load.car().deck().width()));
            } else if (piece.shape().crate() != null) {
                crates.add(piece.shape());
            } else {
                free.add(Slab.of(piece.shape(), load.car().deck().width()));
            }
        }
        Row.of(crates, load.car().deck().width()).forEach(row -> free.add(Slab.of(row, load.car().deck().width())));
        return load.load().withStands(best(fixed, free));
    }

    /** The first free place for a container of this length, nearest the middle of the car. */
    private Optional<ContainerSeat> seat(Shape shape, List<Slab> fixed) {
        if (shape.wheeled() || shape.crate() != null) {
            return Optional.empty();
        }
        int middle = load.car().deck().length() / 2;
        return load.car().seats().stream()
                .filter(seat -> seat.length() == shape.size().x())
                .filter(seat -> fixed.stream().noneMatch(one -> one.overlaps(seat.x(), seat.x() + seat.length())))
                .min((a, b) -> Integer.compare(
                        Math.abs(a.x() + a.length() / 2 - middle), Math.abs(b.x() + b.length() / 2 - middle)));
    }

    private List<Stand> best(List<Slab> fixed, List<Slab> free) {
        LinePlan line = new LinePlan(load.car().deck().length(), fixed);
        DeckScore score = new DeckScore(legs, load.car());
        List<Stand> best = List.of();
        double bestScore = Double.MAX_VALUE;
        for (List<Slab> order : Orders.of(free, MOST_ORDERED)) {
            for (List<Stand> stands : line.placed(order)) {
                double own = score.of(pieces(stands));
                if (own < bestScore) {
                    best = stands;
                    bestScore = own;
                }
            }
        }
        return best.isEmpty() ? line.crowded(free) : best;
    }

    private List<PlacedPiece> pieces(List<Stand> stands) {
        List<PlacedPiece> pieces = new ArrayList<>();
        for (Stand stand : stands) {
            load.piece(stand.what()).ifPresent(piece -> pieces.add(new PlacedPiece(piece.shape(), stand)));
        }
        return pieces;
    }

    /** A stand of a shape that looks forward. */
    static Stand stand(Shape shape, int x, int y) {
        return new Stand(shape.id(), new Pose(new Point(x, y, 0), QuarterTurn.R0), false);
    }
}
