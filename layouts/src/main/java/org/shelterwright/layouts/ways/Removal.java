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

    /** The removals of some units of a scene. */
    public static List<Removal> of(Scene scene, List<PlacedUnit> units) {
        KeptWays ways = new KeptWays(scene);
        return units.stream().map(unit -> of(scene, ways, unit)).toList();
    }

    private static Removal of(Scene scene, KeptWays ways, PlacedUnit unit) {
        BitSet with = new BitSet();
        with.set(unit.index());
        BitSet first = scene.guestsOf(with);
        first.clear(unit.index());
        if (!ways.free(unit, first)) {
            Optional<List<PlacedUnit>> blockers = Blockers.of(ways.ways(), unit, first);
            if (blockers.isEmpty()) {
                return new Removal(unit, false, List.of());
            }
            blockers.get().forEach(one -> first.set(one.index()));
            first.or(scene.guestsOf(first));
            first.clear(unit.index());
        }
        List<PlacedUnit> list = new ArrayList<>();
        first.stream().forEach(i -> list.add(scene.units().get(i)));
        return new Removal(unit, true, list);
    }
}
