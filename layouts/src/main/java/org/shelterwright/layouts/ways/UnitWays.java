package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.sliding.Moving;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.sliding.Way;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage.Answer;

/**
 * The ways of all units of a scene, as they stand on station. Questions are prepared when first asked and then kept. A
 * leaf that opens inward is taken to be off its hinges while something is brought in. Not for several threads.
 */
public final class UnitWays {
    private final Scene scene;
    private final List<Opening> openings;
    private final Questions questions;

    public UnitWays(Scene scene) {
        this.scene = scene;
        this.questions = new Questions(scene);
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
        return unit.derived(Alone.class, one -> new Alone(ask(one, new BitSet(), false, true)))
                .passage();
    }

    private record Alone(Passage passage) {}

    /**
     * The way of a unit past all that are not gone, by the first opening that does.
     *
     * @param gone units by index; the unit itself never stands in its own way
     */
    public Passage out(PlacedUnit unit, BitSet gone) {
        return alone(unit).free() ? ask(unit, gone, false, false) : alone(unit);
    }

    /** The same by the opening with the shortest way; hatches and panels only if no door does. */
    public Passage shortest(PlacedUnit unit, BitSet gone) {
        return alone(unit).free() ? ask(unit, gone, true, false) : alone(unit);
    }

    /** The way through one opening only. */
    public Passage through(PlacedUnit unit, Opening opening, BitSet gone) {
        Passage last = null;
        for (Mode mode : Mode.of(unit.item())) {
            last = ask(unit, gone, opening, mode, questions.of(unit, opening, mode));
            Parts parts = last.free() && mode.apart() ? parts(unit, gone, false) : Parts.NONE;
            if (last.free() && parts.free()) {
                return last.with(parts.swept());
            }
        }
        if (last == null) {
            throw new IllegalStateException("There is at least one state in which a unit is brought in.");
        }
        return last.free() ? Passage.of(unit, Answer.BLOCKED, last.frontier()) : last;
    }

    /** Tries the states in which the unit may be brought in, the plainest first; in each of them the openings. */
    private Passage ask(PlacedUnit unit, BitSet gone, boolean shortest, boolean bare) {
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
        for (Mode mode : Mode.of(unit.item())) {
            Passage best = null;
            for (Opening opening : openings) {
                if (best != null && (!shortest || trouble(opening) > trouble(opening(best)))) {
                    break;
                }
                Moving question = bare ? questions.bare(unit, opening, mode) : questions.of(unit, opening, mode);
                Passage one = ask(unit, gone, opening, mode, question);
                if (one.answer() == Answer.OVERLAPS) {
                    return one;
                }
                frontier.or(one.frontier());
                if (one.free() && (best == null || one.length() < best.length())) {
                    best = one;
                }
            }
            Parts parts = best != null && mode.apart() ? parts(unit, gone, bare) : Parts.NONE;
            if (best != null && parts.free()) {
                return best.with(parts.swept());
            }
            frontier.or(parts.frontier());
        }
        return Passage.of(unit, frontier.isEmpty() ? Answer.TOO_LARGE : Answer.BLOCKED, frontier);
    }

    /** How the parts that came off come in by themselves: what they pass through, or what bounds one that cannot. */
    private record Parts(boolean free, BitSet frontier, List<Box> swept) {
        private static final Parts NONE = new Parts(true, new BitSet(), List.of());
    }

    private Parts parts(PlacedUnit unit, BitSet gone, boolean bare) {
        BitSet away = (BitSet) gone.clone();
        away.set(unit.index());
        List<Box> swept = new ArrayList<>();
        for (int part = 0; part < Questions.parts(unit).size(); part++) {
            BitSet frontier = new BitSet();
            boolean free = false;
            for (Opening opening : openings) {
                Moving question = questions.part(unit, opening, part, bare);
                if (!free && question.overlapped(away).isEmpty()) {
                    Way way = question.ask(away);
                    free = way.free();
                    frontier.or(way.frontier());
                    swept(question, way).forEach(swept::addAll);
                }
            }
            if (!free) {
                return new Parts(false, frontier, List.of());
            }
        }
        return new Parts(true, new BitSet(), swept);
    }

    private static List<List<Box>> swept(Moving question, Way way) {
        List<List<Box>> swept = new ArrayList<>();
        for (int i = 1; i < way.stages().size(); i++) {
            swept.add(question.swept(way.stages().get(i - 1), way.stages().get(i)));
        }
        return swept;
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

    private static Passage ask(PlacedUnit unit, BitSet gone, Opening opening, Mode mode, Moving query) {
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
        return new Passage(
                unit,
                Answer.FREE,
                opening,
                way.stages().stream().map(query::at).toList(),
                swept(query, way),
                way.stages(),
                new BitSet(),
                mode.apart(),
                mode.lyingOn());
    }
}
