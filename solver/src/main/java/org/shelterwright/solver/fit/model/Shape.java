package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;

/**
 * What an item fills and keeps free at one turn in one situation, as flat cuboids (six ints each) relative to the low
 * corner of its turned size.
 *
 * @param solids flat cuboids
 * @param zones flat cuboids of clear zones and sweeps
 * @param purposes one for each zone
 * @param reach the least cuboid that holds size, solids and zones
 */
public record Shape(Size size, int[] solids, int[] zones, Purpose[] purposes, int[] reach) {

    /** Compiles one item. */
    static Shape of(Item item, QuarterTurn turn, Situation situation) {
        List<Box> zones = new ArrayList<>();
        List<Purpose> purposes = new ArrayList<>();
        for (ClearZone zone : item.zones()) {
            if (zone.presence().in(situation)) {
                zones.add(turn.apply(zone.box(), item.size()));
                purposes.add(zone.purpose());
            }
        }
        if (situation == Situation.ON_STATION) {
            for (MovablePart part : item.movableParts()) {
                zones.add(turn.apply(part.sweep(), item.size()));
                purposes.add(Purpose.SWING);
            }
        }
        Size turned = turn.apply(item.size());
        Box reach = turned.box();
        for (Box zone : zones) {
            reach = reach.hull(zone);
        }
        List<Box> solids = item.solids(situation).stream()
                .map(box -> turn.apply(box, item.size()))
                .toList();
        return new Shape(turned, flat(solids), flat(zones), purposes.toArray(Purpose[]::new), flat(List.of(reach)));
    }

    /** Six ints a cuboid: low corner, high corner. */
    static int[] flat(List<Box> boxes) {
        int[] flat = new int[boxes.size() * 6];
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            flat[6 * i] = box.x0();
            flat[6 * i + 1] = box.y0();
            flat[6 * i + 2] = box.z0();
            flat[6 * i + 3] = box.x1();
            flat[6 * i + 4] = box.y1();
            flat[6 * i + 5] = box.z1();
        }
        return flat;
    }

    boolean sameParts(Shape other) {
        return java.util.Arrays.equals(solids, other.solids)
                && java.util.Arrays.equals(zones, other.zones)
                && java.util.Arrays.equals(purposes, other.purposes);
    }
}
