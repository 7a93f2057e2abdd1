package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.sliding.Obstacle;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.sliding.Way;
import org.shelterwright.catalog.sliding.WayQuery;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage.Answer;

/**
 * The ways of all units of a scene, as they stand on station. Questions are prepared when first asked and then kept. A
 * leaf that opens inward is taken to be off its hinges while something is brought in. Not for several threads.
 */
public final class UnitWays {
    /** Room outside beyond what a unit needs (µm). */
    private static final int ROOM = 500 * Lengths.MM;

    private final Scene scene;
    private final List<PlacedUnit> units;
    private final List<Opening> openings;
    private final Map<Long, WayQuery> queries = new HashMap<>();

    public UnitWays(Scene scene) {
        this.scene = scene;
        this.units = scene.units();
        this.openings = openings(scene.body());
    }

    /** The openings that equipment comes through: doors, then hatches, then removable panels; the largest first in each. */
    public static List<Opening> openings(Body body) {
        return body.openings().stream()
                .filter(one -> one.kind() != Opening.Kind.WINDOW)
                .sorted(Comparator.comparingInt(UnitWays::trouble)
                        .thenComparing(UnitWays::area, Comparator.reverseOrder()))
                .toList();
    }

    private static int trouble(Opening opening) {
        return switch (opening.kind()) {
            case DOOR -> 0;
            case HATCH -> 1;
            default -> 2;
        };
    }

    private static long area(Opening opening) {
        Box a = opening.area();
        return switch (opening.wall().axis()) {
            case X -> (long) a.extent(Axis.Y) * a.extent(Axis.Z);
            case Y -> (long) a.extent(Axis.X) * a.extent(Axis.Z);
            case Z -> (long) a.extent(Axis.X) * a.extent(Axis.Y);
        };
    }

    public Scene scene() {
        return scene;
    }

    /** The way of a unit in the body with nothing else in it; kept with the unit. */
    public Passage alone(PlacedUnit unit) {
        return unit.derived(Alone.class, one -> new Alone(ask(one, new BitSet(), false, this::bare)))
                .passage();
    }

    private record Alone(Passage passage) {}

    /**
     * The way of a unit past all that are not gone, by the first opening that does.
     *
     * @param gone units by index; the unit itself never stands in its own way
     */
    public Passage out(PlacedUnit unit, BitSet gone) {
        return alone(unit).free() ? ask(unit, gone, false, this::query) : alone(unit);
    }

    /** The same by the opening with the shortest way; hatches and panels only if no door does. */
    public Passage shortest(PlacedUnit unit, BitSet gone) {
        return alone(unit).free() ? ask(unit, gone, true, this::query) : alone(unit);
    }

    /** The way through one opening only. */
    public Passage through(PlacedUnit unit, Opening opening, BitSet gone) {
        return ask(unit, gone, opening, query(unit, opening));
    }

    private Passage ask(
            PlacedUnit unit, BitSet gone, boolean shortest, BiFunction<PlacedUnit, Opening, WayQuery> queries) {
        if (outside(unit)) {
            return new Passage(
                    unit,
                    Answer.FREE,
                    null,
                    List.of(unit.solids(Situation.ON_STATION)),
                    List.of(),
                    List.of(Stage.START),
                    new BitSet());
        }
        BitSet frontier = new BitSet();
        Passage best = null;
        for (Opening opening : openings) {
            if (best != null && (!shortest || trouble(opening) > trouble(opening(best)))) {
                break;
            }
            Passage one = ask(unit, gone, opening, queries.apply(unit, opening));
            if (one.answer() == Answer.OVERLAPS) {
                return one;
            }
            frontier.or(one.frontier());
            if (one.free() && (best == null || one.length() < best.length())) {
                best = one;
            }
        }
        if (best != null) {
            return best;
        }
        return Passage.of(unit, frontier.isEmpty() ? Answer.TOO_LARGE : Answer.BLOCKED, frontier);
    }

    private static Opening opening(Passage passage) {
        Opening opening = passage.opening();
        if (opening == null) {
            throw new IllegalStateException("A way through an opening has one.");
        }
        return opening;
    }

    private boolean outside(PlacedUnit unit) {
        Box inside = scene.body().inside().box();
        return unit.solids(Situation.ON_STATION).stream().noneMatch(inside::overlaps);
    }

    private static Passage ask(PlacedUnit unit, BitSet gone, Opening opening, WayQuery query) {
        BitSet away = (BitSet) gone.clone();
        away.set(unit.index());
        List<Integer> overlapped = query.overlapped(away);
        if (!overlapped.isEmpty()) {
            BitSet others = new BitSet();
            overlapped.stream().filter(one -> one >= 0).forEach(others::set);
            return Passage.of(unit, Answer.OVERLAPS, others);
        }
        Way way = query.ask(away);
        if (!way.free()) {
            return Passage.of(unit, way.frontier().isEmpty() ? Answer.TOO_LARGE : Answer.BLOCKED, way.frontier());
        }
        List<List<Box>> swept = new ArrayList<>();
        for (int i = 1; i < way.stages().size(); i++) {
            swept.add(query.swept(way.stages().get(i - 1), way.stages().get(i)));
        }
        return new Passage(
                unit,
                Answer.FREE,
                opening,
                way.stages().stream().map(query::at).toList(),
                swept,
                way.stages(),
                new BitSet());
    }

    private WayQuery query(PlacedUnit unit, Opening opening) {
        long key = ((long) unit.index() << 32) | openings.indexOf(opening);
        return queries.computeIfAbsent(key, any -> make(unit, opening, units));
    }

    private WayQuery bare(PlacedUnit unit, Opening opening) {
        return make(unit, opening, List.of());
    }

    private WayQuery make(PlacedUnit unit, Opening opening, List<PlacedUnit> others) {
        List<Obstacle> obstacles = new ArrayList<>();
        Shell.solids(scene.body(), opening).forEach(box -> obstacles.add(new Obstacle(box, Obstacle.FIXED)));
        for (PlacedUnit other : others) {
            if (other != unit) {
                other.solids(Situation.ON_STATION).forEach(box -> obstacles.add(new Obstacle(box, other.index())));
            }
        }
        List<Box> solids = unit.solids(Situation.ON_STATION);
        Box hull = solids.stream().reduce(Box::hull).orElseThrow();
        Box region = region(scene.body(), opening, hull);
        return new WayQuery(solids, obstacles, region, target(scene.body(), opening, region), true);
    }

    /** Inside and outside of the body as far as a unit may be on its way; no lower than the floor but through the floor. */
    private static Box region(Body body, Opening opening, Box unit) {
        int longest = Math.max(unit.extent(Axis.X), Math.max(unit.extent(Axis.Y), unit.extent(Axis.Z))) * 3 / 2;
        Box o = body.outside();
        int out = longest + ROOM;
        Face wall = opening.wall();
        int low = wall == Face.BOTTOM ? o.z0() - out : Math.min(0, unit.z0());
        int high = wall == Face.TOP ? o.z1() + out : body.inside().z();
        return new Box(o.x0() - out, o.y0() - out, low, o.x1() + out, o.y1() + out, high);
    }

    private static Box target(Body body, Opening opening, Box region) {
        Box o = body.outside();
        return switch (opening.wall()) {
            case REAR -> new Box(region.x0(), region.y0(), region.z0(), o.x0(), region.y1(), region.z1());
            case FRONT -> new Box(o.x1(), region.y0(), region.z0(), region.x1(), region.y1(), region.z1());
            case RIGHT -> new Box(region.x0(), region.y0(), region.z0(), region.x1(), o.y0(), region.z1());
            case LEFT -> new Box(region.x0(), o.y1(), region.z0(), region.x1(), region.y1(), region.z1());
            case TOP -> new Box(region.x0(), region.y0(), o.z1(), region.x1(), region.y1(), region.z1());
            case BOTTOM -> new Box(region.x0(), region.y0(), region.z0(), region.x1(), region.y1(), o.z0());
        };
    }
}
