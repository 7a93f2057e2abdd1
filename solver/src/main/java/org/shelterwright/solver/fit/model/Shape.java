package org.shelterwright.solver.fit.model;

import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.PlacedPort;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;

/**
 * What a unit fills and keeps free at one turn in one situation, as flat cuboids (six ints each: low corner, high
 * corner) relative to the low corner of its turned size.
 *
 * @param solids flat cuboids
 * @param zones flat cuboids of clear zones and sweeps
 * @param purposes one for each zone
 * @param plugs flat cuboids that plugs of wires fill, on station
 * @param hull the least cuboid that holds the solids
 * @param reach the least cuboid that holds size, solids and zones
 */
public record Shape(int[] solids, int[] zones, Purpose[] purposes, int[] plugs, int[] hull, int[] reach) {

    /** Takes the shape of a unit that stands with its low corner at the origin. */
    static Shape of(PlacedUnit unit, Situation situation) {
        List<PlacedZone> zones = unit.zones(situation);
        List<Box> solids = unit.solids(situation);
        Box hull = solids.stream().reduce(Box::hull).orElse(unit.outline(situation));
        return new Shape(
                flat(solids),
                flat(zones.stream().map(PlacedZone::box).toList()),
                zones.stream().map(PlacedZone::purpose).toArray(Purpose[]::new),
                flat(unit.wiredPorts().stream().map(PlacedPort::plugRoom).toList()),
                flat(List.of(hull)),
                flat(List.of(unit.reach(situation))));
    }

    static int[] flat(List<Box> boxes) {
        return boxes.stream()
                .flatMapToInt(box ->
                        java.util.stream.IntStream.of(box.x0(), box.y0(), box.z0(), box.x1(), box.y1(), box.z1()))
                .toArray();
    }

    boolean sameParts(Shape other) {
        return Arrays.equals(solids, other.solids)
                && Arrays.equals(zones, other.zones)
                && Arrays.equals(purposes, other.purposes);
    }
}
