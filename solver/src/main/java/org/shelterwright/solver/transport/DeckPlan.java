package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shelterwright.catalog.space.Face;
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
 * by itself, crates in rows across; all orders are tried (at most 120), pinned things and container places keep their place, what is
 * between them is spaced evenly, and the order with the best balance that keeps the outline is taken.
 */
final class DeckPlan {
    private static final int MOST_ORDERED = 5;
    private static final int[] STEPS = {1_000_000, 300_000, 100_000, 50_000};
    private static final int MOST_ROUNDS = 20;
    private static final double LEAST_GAIN = 1e-9;

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

    /**
     * A load with positions.
     *
     * @param left what found no place between the walls of the car
     */
    record Planned(Load load, List<Stand> left) {}

    Planned planned() {
        if (load.pieces().stream().allMatch(piece -> piece.stand().pinned())) {
            return new Planned(load.load(), List.of());
        }
        return walls() ? packed() : new Planned(lined(), List.of());
    }

    /** Whether it is to be packed between walls. */
    private boolean walls() {
        return load.car().deck().clearHeight() != null
                && load.car().kind() != TransitCar.Kind.SHIP_DECK
                && load.pieces().stream().allMatch(piece -> piece.shape().crate() != null);
    }

    private Planned packed() {
        TransitCar car = load.car();
        LegScene leg = legs.get(0);
        Double limit = CarChoice.loadLimitKg(car, leg.lineCategory());
        List<Shape> crates = load.pieces().stream().map(PlacedPiece::shape).toList();
        List<Stand> stands = packer.pack(new CratePacker.Ask(
                car,
                leg.rules(),
                crates,
                limit == null ? Double.MAX_VALUE : limit,
                Stops.of(leg.journey().journey(), crates),
                Stops.apart(leg.journey().journey(), crates),
                seed));
        List<Stand> left = load.load().stands().stream()
                .filter(stand -> stands.stream().noneMatch(one -> one.what().equals(stand.what())))
                .toList();
        return new Planned(load.load().withStands(stands).withPacked(true), left);
    }

    /** Those that found no place anywhere, behind the others beyond the deck, so that the ledger can say so. */
    static Load crowded(Load load, List<Stand> left, PlacedLoad placed) {
        List<Stand> stands = new ArrayList<>(load.stands());
        int beyond = placed.car().deck().length();
        for (Stand stand : left) {
            stands.add(stand.with(Pose.at(new Point(beyond, 0, 0))));
            beyond += placed.piece(stand.what())
                    .map(piece -> piece.shape().size().x())
                    .orElse(0);
        }
        return load.withStands(stands);
    }

    /**
     * Positions in one line.
     *
     * @param score less is better; {@link Double#MAX_VALUE} if they do not fit the deck
     */
    record Lined(List<Stand> stands, double score) {
        /** Whether all fits, no axle is over its rating and the outline is kept. */
        boolean holds() {
            return score < DeckScore.FOUL;
        }
    }

    private Load lined() {
        return load.load().withStands(line().stands());
    }

    /** The best positions in one line. */
    Lined line() {
        List<Slab> fixed = new ArrayList<>();
        List<Slab> free = new ArrayList<>();
        List<Shape> bodies = new ArrayList<>();
        List<Shape> crates = new ArrayList<>();
        int width = load.car().deck().width();
        for (PlacedPiece piece : load.pieces()) {
            Shape shape = piece.shape();
            if (piece.stand().pinned()) {
                fixed.add(Slab.fixed(piece));
            } else if (shape.crate() != null) {
                crates.add(shape);
            } else if (!shape.wheeled() && seats(shape).findAny().isPresent()) {
                bodies.add(shape);
            } else {
                free.add(Slab.of(shape, width));
            }
        }
        List<Row> rows = Row.of(crates, width);
        if (free.isEmpty() && bodies.isEmpty() && fixed.isEmpty() && leans()) {
            return tight(rows);
        }
        rows.forEach(row -> free.add(Slab.of(row, width)));
        Lined best = null;
        for (List<Slab> seated : seated(bodies, fixed)) {
            Lined own = best(seated, free);
            best = best == null || own.score() < best.score() ? own : best;
        }
        return best == null
                ? new Lined(new LinePlan(load.car().deck().length(), fixed).crowded(free), Double.MAX_VALUE)
                : best;
    }

    /** Whether crates may lean on a wall or headboard at the front. */
    private boolean leans() {
        return load.car().kind() == TransitCar.Kind.LORRY
                && load.car().stops().stream().anyMatch(stop -> stop.side() == Face.FRONT);
    }

    /** Rows of crates one against the other from the front on. */
    private Lined tight(List<Row> rows) {
        List<Stand> stands = new ArrayList<>();
        int x = load.car().deck().length();
        for (Row row : rows) {
            x -= row.length();
            stands.addAll(Slab.of(row, load.car().deck().width()).movedTo(x).placed());
        }
        double score = x < 0 ? Double.MAX_VALUE : new DeckScore(legs, load.car()).of(pieces(stands));
        return new Lined(stands, score);
    }

    private Stream<ContainerSeat> seats(Shape shape) {
        return load.car().seats().stream()
                .filter(seat -> seat.length() == shape.size().x());
    }

    /** All ways to put bodies on free container places, with what is fixed. */
    private List<List<Slab>> seated(List<Shape> bodies, List<Slab> fixed) {
        List<List<Slab>> ways = new ArrayList<>(List.of(fixed));
        for (Shape body : bodies) {
            List<List<Slab>> more = new ArrayList<>();
            for (List<Slab> way : ways) {
                seats(body)
                        .filter(seat -> way.stream().noneMatch(one -> one.overlaps(seat.x(), seat.x() + seat.length())))
                        .forEach(seat -> {
                            List<Slab> with = new ArrayList<>(way);
                            with.add(Slab.at(body, seat.x(), load.car().deck().width()));
                            more.add(with);
                        });
            }
            ways = more;
        }
        return ways;
    }

    private Lined best(List<Slab> fixed, List<Slab> free) {
        LinePlan line = new LinePlan(load.car().deck().length(), fixed);
        DeckScore score = new DeckScore(legs, load.car());
        List<Slab> best = null;
        double least = Double.MAX_VALUE;
        for (List<Slab> order : Orders.of(free, MOST_ORDERED)) {
            for (List<Slab> placed : line.placed(order)) {
                double own = score.of(pieces(Slab.placed(line.whole(placed))));
                if (best == null || own < least) {
                    best = placed;
                    least = own;
                }
            }
        }
        return best == null ? new Lined(line.crowded(free), Double.MAX_VALUE) : refined(best, line, score);
    }

    /** Shifts one thing after the other by ever shorter ways as long as that is better. */
    private Lined refined(List<Slab> start, LinePlan line, DeckScore score) {
        List<Slab> best = new ArrayList<>(start);
        double least = score.of(pieces(Slab.placed(line.whole(best))));
        for (int step : STEPS) {
            boolean better = true;
            for (int round = 0; better && round < MOST_ROUNDS; round++) {
                better = false;
                for (int i = 0; i < best.size(); i++) {
                    for (int way : new int[] {-step, step}) {
                        List<Slab> tried = new ArrayList<>(best);
                        Slab moved = tried.remove(i);
                        moved = moved.movedTo(moved.x() + way);
                        if (!line.free(moved, line.whole(tried))) {
                            continue;
                        }
                        tried.add(i, moved);
                        double own = score.of(pieces(Slab.placed(line.whole(tried))));
                        if (own < least - LEAST_GAIN) {
                            best = tried;
                            least = own;
                            better = true;
                        }
                    }
                }
            }
        }
        return new Lined(Slab.placed(line.whole(best)), least);
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
