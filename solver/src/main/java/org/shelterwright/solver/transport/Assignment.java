package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.transport.CarChoice;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * Puts pieces that have no place on a leg on its cars: longest first, each on the first car on which it stands with all limits of place and axles kept, apart
 * from what it may not ride with and with what it must. If none has, on the first of a fitting kind, so that the ledger can say what
 * lacks.
 */
final class Assignment {
    /** Share of a space that crates can mostly fill. */
    private static final double FILL = 0.8;

    private final JourneyScene scene;
    private final Map<String, Load> loads = new LinkedHashMap<>();

    Assignment(JourneyScene scene) {
        this.scene = scene;
        scene.journey().loads().forEach(load -> loads.put(load.id(), load));
    }

    Journey assigned() {
        for (LegScene leg : scene.legs()) {
            for (Shape shape : open(leg)) {
                assign(leg, shape);
            }
        }
        return scene.journey().withLoads(new ArrayList<>(loads.values()));
    }

    /** The pieces that have no place on a leg, wheeled ones first, then bodies, the longest first. */
    private List<Shape> open(LegScene leg) {
        Set<String> taken = new LinkedHashSet<>();
        leg.drives().forEach(driven -> {
            taken.add(driven.vehicle().id());
            driven.trailer().ifPresent(trailer -> taken.add(trailer.id()));
        });
        for (PlacedLoad load : leg.loads()) {
            Load now = loads.getOrDefault(load.id(), load.load());
            now.stands().forEach(stand -> taken.add(stand.what()));
        }
        return scene.journey().pieces().stream()
                .filter(piece -> !taken.contains(piece.id()))
                .flatMap(piece -> scene.shape(piece.id()).stream())
                .sorted(Comparator.comparing((Shape shape) -> !shape.wheeled())
                        .thenComparing(shape -> shape.crate() != null)
                        .thenComparing(shape -> -shape.size().x())
                        .thenComparing(Shape::id))
                .toList();
    }

    private void assign(LegScene leg, Shape shape) {
        List<PlacedLoad> kind =
                leg.loads().stream().filter(load -> fitsKind(load.car(), shape)).toList();
        PlacedLoad chosen = kind.stream()
                .filter(load -> takes(leg, load, shape))
                .findFirst()
                .orElse(kind.isEmpty() ? null : kind.get(0));
        if (chosen != null) {
            Load load = loads.getOrDefault(chosen.id(), chosen.load());
            List<Stand> stands = new ArrayList<>(load.stands());
            stands.add(new Stand(shape.id(), Pose.at(Point.ORIGIN), false));
            loads.put(load.id(), load.withStands(stands));
        }
    }

    /** Vehicles go on open decks, decks of ships and into holds; bodies also; crates anywhere. */
    private static boolean fitsKind(TransitCar car, Shape shape) {
        boolean walls = car.kind() == TransitCar.Kind.CONTAINER || car.kind() == TransitCar.Kind.COVERED_WAGON;
        return shape.crate() != null || !walls;
    }

    private boolean takes(LegScene leg, PlacedLoad load, Shape shape) {
        Load now = loads.getOrDefault(load.id(), load.load());
        Piece piece = scene.journey().piece(shape.id()).orElse(null);
        if (piece != null
                && (piece.apart().stream().anyMatch(other -> now.stand(other).isPresent())
                        || piece.together().stream()
                                .anyMatch(other -> now.stand(other).isEmpty() && !nowhere(leg, other)))) {
            return false;
        }
        List<PlacedPiece> pieces = new ArrayList<>();
        for (Stand stand : now.stands()) {
            scene.shape(stand.what()).ifPresent(other -> pieces.add(new PlacedPiece(other, stand)));
        }
        pieces.add(new PlacedPiece(shape, new Stand(shape.id(), Pose.at(Point.ORIGIN), false)));
        double kg = pieces.stream().mapToDouble(one -> one.shape().mostKg()).sum();
        Double limitKg = CarChoice.loadLimitKg(load.car(), leg.lineCategory());
        if (limitKg != null && kg > limitKg) {
            return false;
        }
        return load.car().deck().clearHeight() == null
                ? new DeckPlan(List.of(leg), new PlacedLoad(now, load.car(), pieces), ask -> List.of(), 0)
                        .line()
                        .holds()
                : room(load.car(), pieces);
    }

    /** Whether things between walls take no more than most of the space; what does not fit in the end is told by the ledger. */
    private static boolean room(TransitCar car, List<PlacedPiece> pieces) {
        Integer clear = car.deck().clearHeight();
        double space = (double) car.deck().length() * car.deck().width() * (clear == null ? 1 : clear);
        double taken = pieces.stream()
                .mapToDouble(one -> (double) one.shape().size().x()
                        * one.shape().size().y()
                        * one.shape().size().z())
                .sum();
        return taken <= FILL * space;
    }

    private boolean nowhere(LegScene leg, String piece) {
        return leg.loads().stream()
                .map(load -> loads.getOrDefault(load.id(), load.load()))
                .noneMatch(load -> load.stand(piece).isPresent());
    }
}
