package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Which units must go so that a stuck one gets out: a set of which none can stay. It need not be the only such set, nor the
 * least; ties go by unit number.
 *
 * <p>Method: the way with all gone; of them only those that stand in it; these are put back one by one, the heaviest first, as
 * long as there still is a way.
 */
public final class Blockers {
    private Blockers() {}

    /**
     * The units that must go.
     *
     * @param gone units, by index, that are away already
     * @return in the order of the brief; empty if it comes through no opening even alone
     */
    public static Optional<List<PlacedUnit>> of(UnitWays ways, PlacedUnit unit, BitSet gone) {
        Passage alone = ways.alone(unit);
        if (!alone.free()) {
            return Optional.empty();
        }
        List<PlacedUnit> all = ways.scene().units();
        BitSet away = (BitSet) gone.clone();
        List<PlacedUnit> inWay = new ArrayList<>();
        for (PlacedUnit other : all) {
            if (other != unit && !gone.get(other.index()) && alone.meets(other)) {
                inWay.add(other);
                away.set(other.index());
            }
        }
        List<PlacedUnit> dearFirst = new ArrayList<>(inWay);
        dearFirst.sort(
                Comparator.comparingDouble((PlacedUnit one) -> -mass(one)).thenComparing(PlacedUnit::index));
        for (PlacedUnit one : dearFirst) {
            away.clear(one.index());
            if (!ways.out(unit, away).free()) {
                away.set(one.index());
            }
        }
        return Optional.of(inWay.stream().filter(one -> away.get(one.index())).toList());
    }

    private static double mass(PlacedUnit unit) {
        Double kg = unit.mass(Situation.ON_STATION).massKg();
        return kg == null ? 0 : kg;
    }
}
