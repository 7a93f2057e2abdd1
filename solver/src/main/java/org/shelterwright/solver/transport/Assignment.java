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
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * Puts pieces that have no place on a leg on its cars: longest first, each on the first car that still has length and load for it, apart
 * from what it may not ride with and with what it must. If none has, on the first of a fitting kind, so that the ledger can say what
 * lacks.
 */
final class Assignment {
    private static final int USUAL_GAP = 300_000;

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
        List<PlacedLoad> kind = leg.loads().stream()
                .filter(load -> fitsKind(load.car(), shape))
                .toList();
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
        double kg = shape.mostKg();
        long used = 0;
        double area = area(shape);
        for (Stand stand : now.stands()) {
            Shape other = scene.shape(stand.what()).orElse(null);
            if (other == null) {
                continue;
            }
            kg += other.mostKg();
            if (other.crate() == null) {
                used += other.size().x() + USUAL_GAP;
            } else {
                area += area(other);
            }
            if (piece != null && piece.apart().contains(other.id())) {
                return false;
            }
        }
        if (shape.crate() == null) {
            used += shape.size().x() + (long) (1000 * leg.rules().valueOr(Figure.LENGTH_TOLERANCE, 0));
            area = 0;
        }
        Double limitKg = CarChoice.loadLimitKg(load.car(), leg.lineCategory());
        long left = load.car().deck().length() - used;
        boolean companions = piece == null
                || piece.together().stream()
                        .allMatch(other -> now.stand(other).isPresent() || nowhere(leg, other));
        return companions && left >= 0 && left * 1.1 >= rows(area, load.car()) && (limitKg == null || kg <= limitKg);
    }

    private boolean nowhere(LegScene leg, String piece) {
        return leg.loads().stream()
                .map(load -> loads.getOrDefault(load.id(), load.load()))
                .noneMatch(load -> load.stand(piece).isPresent());
    }

    private static double area(Shape shape) {
        return (double) shape.size().x() * shape.size().y();
    }

    /** Deck length that crates of an area take, two in three of the width used; less where they can be stacked between walls. */
    private static double rows(double area, TransitCar car) {
        Integer clear = car.deck().clearHeight();
        double layers = clear == null ? 1 : Math.max(1, clear / 900_000);
        return area / (0.66 * car.deck().width()) / layers;
    }
}
