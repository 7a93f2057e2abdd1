package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * Compares ways to go: each piece by itself on each car that there is, on the journey's own leg of that mode or, where it has none, on a
 * plain leg under the usual rules. Pieces of one kind are told once. Cost: a plan and a check for each piece and car.
 */
public final class WaysToGo {
    private final JourneyPlanner planner;

    public WaysToGo(JourneyPlanner planner) {
        this.planner = planner;
    }

    /**
     * One piece on one car.
     *
     * @param pieces all pieces of this kind, by their ids
     * @param governing the row that governs
     */
    public record Way(List<String> pieces, TransitCar car, Mode mode, Verdict verdict, Row governing) {
        public Way {
            pieces = List.copyOf(pieces);
        }
    }

    /** All ways, by piece and then by car. */
    public List<Way> of(JourneyScene scene) {
        List<Way> ways = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Piece piece : scene.journey().pieces()) {
            if (told.contains(piece.id())) {
                continue;
            }
            List<String> alike = scene.journey().pieces().stream()
                    .filter(other -> alike(scene, piece, other))
                    .map(Piece::id)
                    .toList();
            told.addAll(alike);
            for (TransitCar car : scene.parts().transit().cars()) {
                way(scene, piece, alike, car).ifPresent(ways::add);
            }
        }
        return ways;
    }

    private static boolean alike(JourneyScene scene, Piece a, Piece b) {
        Optional<Shape> one = scene.shape(a.id());
        Optional<Shape> two = scene.shape(b.id());
        return a.id().equals(b.id())
                || a.crate() != null
                        && b.crate() != null
                        && one.isPresent()
                        && two.isPresent()
                        && one.get().size().equals(two.get().size())
                        && a.crate().fragile() == b.crate().fragile();
    }

    private Optional<Way> way(JourneyScene scene, Piece piece, List<String> alike, TransitCar car) {
        boolean vehicle = piece.part() == Piece.Part.VEHICLE || piece.part() == Piece.Part.TRAILER;
        if (vehicle && (car.kind() == TransitCar.Kind.LORRY || car.kind() == TransitCar.Kind.COVERED_WAGON)) {
            return Optional.empty();
        }
        Mode mode = mode(car);
        Leg leg = leg(scene, mode, car).withLoads(List.of("car"));
        Load load = new Load(
                "car",
                car.name(),
                car.id(),
                List.of(new Stand(piece.id(), Pose.at(Point.ORIGIN), false)),
                List.of(),
                List.of(),
                false,
                Load.HandBrake.SET,
                Load.Gear.NEUTRAL,
                null);
        Journey alone = new Journey(
                "way",
                piece.name(),
                List.of(piece.alone()),
                List.of(load),
                List.of(leg),
                scene.journey().limits(),
                null,
                null);
        PlanResult result = planner.plan(new PlanRequest(alone, scene.parts(), 1));
        LegLedger ledger = result.ledger().legs().get(0);
        Row governing = ledger.ledger().rows().stream()
                .filter(row -> !row.doesNotApply() && row.units().contains(piece.id()))
                .findFirst()
                .orElse(ledger.ledger().rows().get(0));
        return Optional.of(new Way(alike, car, mode, governing.verdict(), governing));
    }

    private static Mode mode(TransitCar car) {
        return switch (car.kind()) {
            case FLAT_WAGON, COVERED_WAGON -> Mode.RAIL;
            case LORRY, CONTAINER -> Mode.ROAD;
            case HOLD -> Mode.AIR;
            case SHIP_DECK -> Mode.SEA;
        };
    }

    /** The first leg of the mode, without what it carries; else a plain one. */
    private static Leg leg(JourneyScene scene, Mode mode, TransitCar car) {
        Leg own = scene.journey().legs().stream()
                .filter(leg -> leg.mode() == mode)
                .findFirst()
                .orElse(null);
        List<String> usual = new ArrayList<>(
                switch (mode) {
                    case ROAD -> List.of("road-eu", "lashing");
                    case RAIL -> List.of("rail-ctu", "rail-loading", "lashing");
                    case SEA -> List.of("sea-ctu", "lashing");
                    case AIR -> List.of("air-14-cfr-25", "lashing");
                });
        List<String> sets = new ArrayList<>(own == null ? usual : own.ruleSets());
        if (car.kind() == TransitCar.Kind.CONTAINER || car.kind() == TransitCar.Kind.HOLD) {
            sets.add("stowage-ctu");
        }
        List<String> known = scene.ruleSets().stream().map(RuleSet::id).toList();
        sets.removeIf(set -> !known.contains(set));
        List<String> cases = own != null
                ? own.loadCases()
                : mode == Mode.SEA
                        ? List.of("sea-a-lengthways", "sea-a-sideways")
                        : mode == Mode.RAIL ? List.of("rail-combined-lengthways", "rail-combined-sideways") : List.of();
        return new Leg(
                "way",
                "by " + mode.word(),
                mode,
                own == null ? "here" : own.from(),
                own == null ? "there" : own.to(),
                null,
                sets.stream().distinct().toList(),
                cases,
                own == null ? null : own.outline(),
                own == null ? null : own.lineCategory(),
                own == null ? null : own.curveM(),
                own != null && own.wet(),
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null);
    }
}
