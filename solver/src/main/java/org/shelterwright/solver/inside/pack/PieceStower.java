package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.solver.fit.kernel.Dice;

/**
 * Finds places for loose pieces. What few places can take goes first, then what is needed at once, what is used first and what is
 * bulky; each into the place that suits it best: near its task, on its side of the body, heavy things low. Pieces that are kept
 * stay. Cost: pieces times places, and the packing. The same seed gives the same places.
 */
public final class PieceStower {
    private static final int TRIES = 6;
    private static final int MOST_ANEW = 3;
    private static final double NEVER = 1e15;

    private final Scene scene;
    private final Layout layout;
    private final MassModel model;
    private final Suiting suiting;
    private final List<Room> rooms = new ArrayList<>();
    private final int grip;

    /** @param scene of the layout, every unit with a stowage place placed */
    public PieceStower(Scene scene) {
        this.scene = scene;
        this.layout = scene.layout();
        this.model = new MassModel(scene.rules());
        this.suiting = new Suiting(scene);
        this.grip = (int) Math.round(scene.rules().valueOr(Figure.STOWAGE_GRIP, 0) * Lengths.MM);
        double restShare = scene.rules().valueOr(Figure.STOWAGE_REST_SHARE, 1);
        for (PlacedUnit unit : scene.units()) {
            unit.item().stowages().forEach(stowage -> rooms.add(new Room(unit, stowage, restShare)));
        }
    }

    private record Wanted(PieceSpec spec, Piece piece, Loose loose, Parcel parcel, double kg, Map<Room, Double> costs) {}

    /** The places of all loose pieces that found any, kept ones included. */
    public List<PiecePlace> stow(long seed) {
        Dice dice = new Dice(seed);
        List<PiecePlace> places = new ArrayList<>();
        List<Wanted> wanted = new ArrayList<>();
        for (PieceSpec spec : layout.brief().listed().pieces()) {
            Piece piece = layout.contents().kinds().get(spec.kind());
            Loose loose = piece == null ? null : piece.loose();
            if (piece == null || loose == null) {
                continue;
            }
            PiecePlace place = layout.contents().places().get(spec.id());
            if (place != null && place.kept() && keep(spec, piece, loose, place)) {
                places.add(place);
            } else {
                wanted.add(wanted(spec, piece, loose));
            }
        }
        List<Wanted> order = new ArrayList<>(wanted);
        order.sort(Comparator.comparingInt((Wanted one) -> Math.min(4, one.costs().size()))
                .thenComparing(one -> Suiting.urgency(one.spec(), one.loose()))
                .thenComparingInt(one -> used(one.spec()))
                .thenComparingDouble(one -> -one.parcel().volume()));
        Map<String, PiecePlace> found = new LinkedHashMap<>();
        for (Wanted one : order) {
            Room room = put(one, dice);
            if (room != null) {
                suiting.took(one.spec(), one.loose(), room.unit(), room.stowage());
            }
        }
        for (Room room : rooms) {
            for (Packed one : room.packed()) {
                found.put(
                        one.parcel().id(),
                        PiecePlace.stowed(
                                one.parcel().id(),
                                room.unit().id(),
                                room.stowage().name(),
                                one.box().low(),
                                one.posture()));
            }
        }
        places.forEach(place -> found.put(place.piece(), place));
        return List.copyOf(found.values());
    }

    private static int used(PieceSpec spec) {
        Integer order = spec.order();
        return order == null ? Integer.MAX_VALUE : order;
    }

    private @Nullable Room put(Wanted one, Dice dice) {
        Map<Room, Double> costs = new LinkedHashMap<>();
        one.costs().forEach((room, cost) -> {
            if (room.mayHold(one.parcel(), one.kg()) && suiting.goodsMay(room.unit(), one.loose())) {
                costs.put(room, cost + suiting.orderCost(one.spec(), room.unit(), room.stowage()));
            }
        });
        List<Room> open = new ArrayList<>(costs.keySet());
        open.sort(Comparator.comparingDouble(room -> costs.getOrDefault(room, NEVER)));
        List<Room> good = open.stream()
                .filter(room -> costs.getOrDefault(room, NEVER) < Suiting.LEAST_FAULT)
                .toList();
        Room found = put(one, good, dice);
        return found != null
                ? found
                : put(one, open.stream().filter(room -> !good.contains(room)).toList(), dice);
    }

    private static @Nullable Room put(Wanted one, List<Room> among, Dice dice) {
        for (Room room : among) {
            if (room.add(one.parcel(), one.kg())) {
                return room;
            }
        }
        for (Room room : among.subList(0, Math.min(MOST_ANEW, among.size()))) {
            if (room.addAnew(one.parcel(), one.kg(), dice, TRIES)) {
                return room;
            }
        }
        return null;
    }

    private Wanted wanted(PieceSpec spec, Piece piece, Loose loose) {
        Map<Room, Double> costs = new LinkedHashMap<>();
        for (Room room : rooms) {
            double cost = suiting.cost(spec, piece, loose, room.unit(), room.stowage());
            if (cost < NEVER) {
                costs.put(room, cost);
            }
        }
        return new Wanted(spec, piece, loose, parcel(spec, piece, loose), kg(piece), costs);
    }

    private boolean keep(PieceSpec spec, Piece piece, Loose loose, PiecePlace place) {
        for (Room room : rooms) {
            Held held = room.unit().id().equals(place.unit())
                            && room.stowage().name().equals(place.place())
                    ? Interiors.held(spec, piece, place, room.unit().item())
                    : null;
            if (held instanceof InPlace in) {
                room.keep(new Packed(parcel(spec, piece, loose), in.posture(), in.box()), kg(piece));
                suiting.took(spec, loose, room.unit(), room.stowage());
                return true;
            }
        }
        return false;
    }

    private Parcel parcel(PieceSpec spec, Piece piece, Loose loose) {
        Integer own = loose.grip();
        return new Parcel(spec.id(), piece.size(), loose.upright(), loose.fragile(), own == null ? grip : own);
    }

    private double kg(Piece piece) {
        return model.grownKg(piece.mass()).orElse(0)
                + model.uncertaintyKg(piece.mass()).orElse(0);
    }
}
