package org.shelterwright.solver.transport;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Doorway;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.Shape;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.Loader;
import org.shelterwright.solver.load.model.Apart;
import org.shelterwright.solver.load.model.BalanceLine;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

/**
 * Packs crates with the search for loads of one room: full support, this side up, stacking strength, mass, balance, door, stops. The room
 * is the car turned about, since it is loaded through its rear. The mass of each crate is taken in its middle; the ledger then judges it
 * where it is.
 */
public final class LoaderPacker implements CratePacker {
    /** Taken for a mass that is not known: more than any crate has, so that it comes on nothing that bears only so much. */
    private static final double UNKNOWN_KG = 200_000;

    private static final long MOVES = 150_000;

    private final Loader loader;
    private final long moves;
    private final StopSignal stop;
    private boolean asked;

    public LoaderPacker(Loader loader) {
        this(loader, MOVES, new StopSignal());
    }

    /** @param stop asks a search to end with the best it has */
    public LoaderPacker(Loader loader, StopSignal stop) {
        this(loader, MOVES, stop);
    }

    /** @param moves budget of each packing */
    public LoaderPacker(Loader loader, long moves) {
        this(loader, moves, new StopSignal());
    }

    private LoaderPacker(Loader loader, long moves, StopSignal stop) {
        this.loader = loader;
        this.moves = moves;
        this.stop = stop;
    }

    /** Whether anything was packed: then another seed may pack it otherwise. */
    boolean asked() {
        return asked;
    }

    /** What crates must share to be of one kind. */
    private record Like(
            Size size,
            @Nullable Double massKg,
            double bearsKg,
            int stop,
            @Nullable String segregation) {}

    @Override
    public List<Stand> pack(Ask ask) {
        Map<Like, Deque<Shape>> kinds = new LinkedHashMap<>();
        for (Shape shape : ask.crates()) {
            kinds.computeIfAbsent(like(ask, shape), key -> new ArrayDeque<>()).add(shape);
        }
        if (kinds.isEmpty()) {
            return List.of();
        }
        List<CargoKind> cargo = new ArrayList<>();
        List<Deque<Shape>> shapes = new ArrayList<>();
        kinds.forEach((like, crates) -> {
            cargo.add(new CargoKind(
                    crates.getFirst().id(),
                    like.size(),
                    Upright.AS_IS,
                    crates.size(),
                    like.massKg() == null ? UNKNOWN_KG : Math.max(1e-3, like.massKg()),
                    like.bearsKg(),
                    like.stop(),
                    1,
                    null,
                    like.segregation()));
            shapes.add(crates);
        });
        TransitCar car = ask.car();
        Size room = room(car);
        boolean weighed = kinds.keySet().stream().allMatch(like -> like.massKg() != null);
        LoadProblem problem = new LoadProblem(room, cargo, Support.FULL, practice(ask, room, weighed));
        asked = true;
        LoadResult found =
                loader.load(LoadRequest.single(problem, ask.seed(), Budget.moves(moves)), progress -> {}, stop);
        List<Stand> stands = new ArrayList<>();
        for (Stowed one : found.load().stowed()) {
            Shape shape = shapes.get(one.kind()).removeFirst();
            stands.add(stand(shape, one.box(), car));
        }
        return stands;
    }

    private static Like like(Ask ask, Shape shape) {
        Crate crate = shape.crate();
        double bears = crate == null ? 0 : crate.bearsKg().orElse(0.0);
        boolean segregated = !ask.apart().getOrDefault(shape.id(), Set.of()).isEmpty();
        return new Like(
                shape.size(),
                shape.massKg() == null ? null : Double.valueOf(shape.mostKg()),
                bears,
                ask.stops().getOrDefault(shape.id(), 1),
                segregated ? shape.id() : null);
    }

    /** The car's inside; of one that narrows with height, the cuboid up to where it begins to. */
    private static Size room(TransitCar car) {
        Integer clear = car.deck().clearHeight();
        int height = clear == null ? 0 : clear;
        for (var step : car.deck().section()) {
            if (2 * step.halfWidth() < car.deck().width()) {
                break;
            }
            height = Math.min(clear == null ? 0 : clear, step.height());
        }
        if (car.deck().section().isEmpty() && clear != null) {
            height = clear;
        }
        return new Size(car.deck().length(), car.deck().width(), height);
    }

    private static Practice practice(Ask ask, Size room, boolean weighed) {
        Practice practice = Practice.NONE.withApart(apart(ask));
        Optional<Doorway> door = ask.car().doorways().stream().max(Comparator.comparingInt(Doorway::width));
        if (door.isPresent()) {
            int wide = (int) Math.ceil(1000 * ask.rules().valueOr(Figure.DOOR_PLAY_WIDE, 0));
            int high = (int) Math.ceil(1000 * ask.rules().valueOr(Figure.DOOR_PLAY_HIGH, 0));
            practice = practice.withDoor(door.get().width() - wide, door.get().height() - high);
        }
        if (ask.stops().values().stream().distinct().count() > 1) {
            practice = practice.inOrderOfStops();
        }
        return weighed ? practice.withMassLimit(ask.loadKg()).withBalance(balance(ask, room)) : practice;
    }

    private static List<Apart> apart(Ask ask) {
        List<Apart> rules = new ArrayList<>();
        ask.apart()
                .forEach((one, others) -> others.stream()
                        .filter(other -> one.compareTo(other) < 0
                                || !ask.apart().getOrDefault(other, Set.of()).contains(one))
                        .filter(other -> ask.crates().stream()
                                .anyMatch(crate -> crate.id().equals(other)))
                        .forEach(other -> rules.add(Apart.notTogether(one, other))));
        return rules;
    }

    /** Both ends and sides of a wagon alike enough; the centre of a container or hold near the middle. */
    private static List<BalanceLine> balance(Ask ask, Size room) {
        List<BalanceLine> lines = new ArrayList<>();
        TransitCar car = ask.car();
        int across = (int) (room.y() * ask.rules().valueOr(Figure.LOAD_OFF_ACROSS, 0.05));
        lines.add(BalanceLine.centreBelow("left", Axis.Y, room.y() / 2 + across, room.y()));
        lines.add(BalanceLine.centreAbove("right", Axis.Y, room.y() / 2 - across, room.y()));
        if (car.wheels().size() == 2) {
            WheelGroup rear = car.wheels().get(0);
            WheelGroup front = car.wheels().get(1);
            int nearX = room.x() - front.x();
            int farX = room.x() - rear.x();
            double tare = car.tareKg() / 2;
            Figure figure = rear.axles() > 1 ? Figure.BOGIE_RATIO : Figure.WAGON_AXLE_RATIO;
            double ratio = ask.rules().valueOr(figure, rear.axles() > 1 ? 3 : 2);
            lines.add(BalanceLine.ratio("front heavy", nearX, farX, ratio, tare, tare));
            lines.add(BalanceLine.ratio("rear heavy", farX, nearX, ratio, tare, tare));
        } else {
            int along = (int) (room.x() * ask.rules().valueOr(Figure.LOAD_OFF_ALONG, 0.1));
            lines.add(BalanceLine.centreBelow("rear", Axis.X, room.x() / 2 + along, room.x()));
            lines.add(BalanceLine.centreAbove("front", Axis.X, room.x() / 2 - along, room.x()));
        }
        return lines;
    }

    private static Stand stand(Shape shape, Box found, TransitCar car) {
        int x = car.deck().length() - found.x1();
        int y = car.deck().width() - found.y1();
        boolean turned = found.x1() - found.x0() != shape.size().x();
        return new Stand(
                shape.id(), new Pose(new Point(x, y, found.z0()), turned ? QuarterTurn.R90 : QuarterTurn.R0), false);
    }
}
