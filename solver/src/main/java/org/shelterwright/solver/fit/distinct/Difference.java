package org.shelterwright.solver.fit.distinct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;

/**
 * How different two layouts of one brief are. Units of one item count as alike: to swap two of them is no difference.
 * Half of the measure is what a unit is mounted on, its side and its turn; half is how far it stands from where it was,
 * one metre or more counting in full.
 */
public final class Difference {
    private static final double FULL = Lengths.M;

    private record Trait(Surface surface, boolean left, QuarterTurn turn, Point centre) {}

    private Difference() {}

    /**
     * Compares two layouts on station.
     *
     * @return from 0 (alike) to 1 (every unit elsewhere). Cost: units times the logarithm of their number
     */
    public static double between(Layout a, Layout b) {
        Map<String, List<Trait>> first = traits(a);
        Map<String, List<Trait>> second = traits(b);
        double sum = 0;
        int count = 0;
        for (var entry : first.entrySet()) {
            List<Trait> one = entry.getValue();
            List<Trait> other = second.getOrDefault(entry.getKey(), List.of());
            for (int i = 0; i < one.size(); i++) {
                sum += i < other.size() ? of(one.get(i), other.get(i)) : 1;
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    private static double of(Trait a, Trait b) {
        boolean alike = a.surface() == b.surface() && a.left() == b.left() && a.turn() == b.turn();
        double way = Math.abs((double) a.centre().x() - b.centre().x())
                + Math.abs((double) a.centre().y() - b.centre().y())
                + Math.abs((double) a.centre().z() - b.centre().z());
        return (alike ? 0 : 0.5) + 0.5 * Math.min(1, way / FULL);
    }

    private static Map<String, List<Trait>> traits(Layout layout) {
        Map<String, List<Trait>> byItem = new LinkedHashMap<>();
        int middle = layout.body().inside().y() / 2;
        for (var unit : layout.brief().units()) {
            Placement placement = layout.placements().get(unit.id());
            if (placement != null) {
                var place = placement.in(Situation.ON_STATION);
                Box outline = place.pose().outline(layout.item(unit).size());
                Point centre = outline.centre();
                byItem.computeIfAbsent(unit.item(), key -> new ArrayList<>())
                        .add(new Trait(
                                place.surface(),
                                centre.y() > middle,
                                place.pose().yaw(),
                                centre));
            }
        }
        byItem.values()
                .forEach(traits -> traits.sort(Comparator.comparing(Trait::left)
                        .thenComparing(trait -> trait.centre().x())
                        .thenComparing(trait -> trait.centre().y())
                        .thenComparing(trait -> trait.centre().z())));
        return byItem;
    }
}
