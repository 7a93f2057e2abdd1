package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.RackMount;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.racks.PieceAlone;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * Finds places in bays for rack-mounted pieces. Pieces that are kept stay; units of the brief that are not placed yet are taken to
 * stand on the floor. Pieces that share no bay are arranged by themselves. The order of aims: every piece has a place, no hard
 * limit is overstepped, limits of use hold and no unit is open to air, and then the masses lie as low as they can.
 */
public final class RackArranger {
    private static final long MOVES_A_PIECE = 3_000;

    private final Scene scene;
    private final RackMemory memory;
    private final Layout layout;
    private final MassModel model;
    private final Map<String, UnitSpec> units = new LinkedHashMap<>();

    /**
     * @param scene of the layout, every unit with a bay placed
     * @param memory what is known of earlier layouts
     */
    public RackArranger(Scene scene, RackMemory memory) {
        this.scene = scene;
        this.memory = memory;
        this.layout = scene.layout();
        this.model = new MassModel(scene.rules());
        layout.brief().units().forEach(unit -> units.put(unit.id(), unit));
    }

    private record Ref(PlacedUnit unit, RackBay bay) {}

    /** The places of all rack-mounted pieces that have any, kept ones included. */
    public List<PiecePlace> arrange(long seed) {
        List<PiecePlace> places = new ArrayList<>();
        Map<String, List<PieceSpec>> groups = new LinkedHashMap<>();
        for (PieceSpec spec : layout.brief().listed().pieces()) {
            Piece piece = layout.contents().kinds().get(spec.kind());
            PiecePlace place = layout.contents().places().get(spec.id());
            if (piece == null || piece.rack() == null) {
                continue;
            }
            if (place != null && place.kept()) {
                places.add(place);
            } else {
                String within = spec.within();
                groups.computeIfAbsent(within == null ? "" : within, key -> new ArrayList<>())
                        .add(spec);
            }
        }
        if (groups.containsKey("")) {
            List<PieceSpec> all = groups.values().stream().flatMap(List::stream).toList();
            groups.clear();
            groups.put("", all);
        }
        groups.forEach((within, specs) -> places.addAll(arrange(specs, refs(within), List.copyOf(places), seed)));
        return places;
    }

    private List<Ref> refs(String within) {
        List<Ref> refs = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            if (within.isEmpty() || unit.id().equals(within)) {
                unit.item().bays().forEach(bay -> refs.add(new Ref(unit, bay)));
            }
        }
        return refs;
    }

    private List<PiecePlace> arrange(List<PieceSpec> specs, List<Ref> refs, List<PiecePlace> kept, long seed) {
        if (refs.isEmpty()) {
            return List.of();
        }
        RackProblem problem = problem(specs, refs, kept);
        List<Seat> seats = memory.seats(
                problem,
                seed,
                () -> ExactRacks.of(problem)
                        .map(ExactRacks::seats)
                        .orElseGet(() -> new RackSearch(problem).seats(seed, MOVES_A_PIECE * specs.size())));
        List<PiecePlace> places = new ArrayList<>();
        for (int i = 0; i < specs.size(); i++) {
            Seat seat = seats.get(i);
            if (seat.bay() >= 0) {
                Ref ref = refs.get(seat.bay());
                places.add(PiecePlace.inRack(
                        specs.get(i).id(), ref.unit().id(), ref.bay().name(), seat.lowest()));
            }
        }
        return places;
    }

    private RackProblem problem(List<PieceSpec> specs, List<Ref> refs, List<PiecePlace> kept) {
        List<RackBayRoom> bays = refs.stream().map(ref -> room(ref, kept)).toList();
        Map<String, Integer> kinds = new LinkedHashMap<>();
        List<RackPiece> pieces = new ArrayList<>();
        Map<String, RackPiece> known = new LinkedHashMap<>();
        for (PieceSpec spec : specs) {
            String key = spec.kind() + "|" + spec.within();
            RackPiece first = known.get(key);
            if (first == null) {
                first = piece(spec, kinds.computeIfAbsent(key, one -> kinds.size()), refs);
                known.put(key, first);
            }
            pieces.add(new RackPiece(spec.id(), first.kind(), first.units(), first.grams(), first.costs()));
        }
        return new RackProblem(pieces, bays);
    }

    private RackBayRoom room(Ref ref, List<PiecePlace> kept) {
        boolean[] blocked = new boolean[ref.bay().units()];
        double keptKg = 0;
        for (PiecePlace place : kept) {
            PieceSpec spec = layout.brief().listed().piece(place.piece()).orElseThrow();
            Held held = place.unit().equals(ref.unit().id())
                            && place.place().equals(ref.bay().name())
                    ? Interiors.held(
                            spec,
                            layout.contents().kind(spec),
                            place,
                            ref.unit().item())
                    : null;
            if (held instanceof InRack in) {
                keptKg += worstKg(in.piece());
                Arrays.fill(blocked, in.lowest() - 1, in.highest(), true);
            }
        }
        Double rating = ref.bay().ratingKg();
        long room = rating == null ? Long.MAX_VALUE / 2 : Math.round(1000 * (rating - keptKg));
        Airflow flow = ref.bay().airflow();
        boolean level = flow == Airflow.FRONT_TO_REAR || flow == Airflow.REAR_TO_FRONT;
        return new RackBayRoom(
                ref.unit().id(), ref.bay().name(), ref.bay().units(), blocked, room, level ? RackCost.OPEN : 0);
    }

    private RackPiece piece(PieceSpec spec, int kind, List<Ref> refs) {
        Piece piece = layout.contents().kind(spec);
        RackMount mount = piece.mount().orElseThrow();
        long grams = Math.round(1000 * worstKg(piece));
        long[][] costs = new long[refs.size()][];
        for (int b = 0; b < costs.length; b++) {
            Ref ref = refs.get(b);
            String within = spec.within();
            if (within == null || within.equals(ref.unit().id())) {
                costs[b] = new long[Math.max(0, ref.bay().units() - mount.units() + 1)];
                for (int u = 0; u < costs[b].length; u++) {
                    costs[b][u] = cost(spec, piece, mount, ref, u + 1, grams);
                }
            }
        }
        return new RackPiece(spec.id(), kind, mount.units(), grams, costs);
    }

    private long cost(PieceSpec spec, Piece piece, RackMount mount, Ref ref, int lowest, long grams) {
        PiecePlace place =
                PiecePlace.inRack(spec.id(), ref.unit().id(), ref.bay().name(), lowest);
        InRack in = new InRack(spec, piece, mount, place, ref.bay(), lowest);
        double hard = PieceAlone.excess(scene, ref.unit(), in, Severity.HARD);
        double medium = PieceAlone.excess(scene, ref.unit(), in, Severity.MEDIUM);
        Airflow own = mount.airflow();
        Airflow flow = ref.bay().airflow();
        if (own != null && flow != null && !own.goesWith(flow)) {
            medium++;
        }
        return Math.round(hard * RackCost.HARD)
                + Math.round(medium * RackCost.MEDIUM)
                + RackCost.moment(grams, in.centreHeight());
    }

    private double worstKg(Piece piece) {
        return model.grownKg(piece.mass()).orElse(0)
                + model.uncertaintyKg(piece.mass()).orElse(0);
    }
}
