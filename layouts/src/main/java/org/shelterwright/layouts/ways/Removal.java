package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * How a unit comes out of the finished body.
 *
 * @param possible false if it comes out past no choice of others
 * @param first units that must be out first: what rests on it, and what stands in its way; each of these may need others out
 *     in its turn
 */
public record Removal(PlacedUnit unit, boolean possible, List<PlacedUnit> first) {
    public Removal {
        first = List.copyOf(first);
    }

    /**
     * The removals of some units of a scene. Cheap: what stands in the way through the empty body is named, and only if that is
     * more than a number of units is it looked for which of them can stay.
     *
     * @param most number of units up to which any set that does is good enough
     */
    public static List<Removal> of(Scene scene, List<PlacedUnit> units, double most) {
        KeptWays ways = new KeptWays(scene);
        return units.stream().map(unit -> of(scene, ways, unit, most)).toList();
    }

    private static Removal of(Scene scene, KeptWays ways, PlacedUnit unit, double most) {
        BitSet with = new BitSet();
        with.set(unit.index());
        BitSet first = scene.guestsOf(with);
        first.clear(unit.index());
        if (!ways.free(unit, first)) {
            Passage alone = ways.ways().alone(unit);
            if (!alone.free()) {
                return new Removal(unit, false, List.of());
            }
            BitSet moved = (BitSet) first.clone();
            scene.units().stream()
                    .filter(other -> other != unit && alone.meets(other))
                    .forEach(other -> moved.set(other.index()));
            first = withGuests(scene, unit, moved);
            if (first.cardinality() > most) {
                first = fewer(scene, ways, unit);
            }
        }
        List<PlacedUnit> list = new ArrayList<>();
        first.stream().forEach(i -> list.add(scene.units().get(i)));
        return new Removal(unit, true, list);
    }

    private static BitSet fewer(Scene scene, KeptWays ways, PlacedUnit unit) {
        BitSet with = new BitSet();
        with.set(unit.index());
        BitSet moved = scene.guestsOf(with);
        moved.clear(unit.index());
        Optional<List<PlacedUnit>> blockers = Blockers.of(ways.ways(), unit, moved);
        blockers.orElse(List.of()).forEach(one -> moved.set(one.index()));
        return withGuests(scene, unit, moved);
    }

    private static BitSet withGuests(Scene scene, PlacedUnit unit, BitSet moved) {
        BitSet all = scene.guestsOf(moved);
        all.clear(unit.index());
        return all;
    }
}
