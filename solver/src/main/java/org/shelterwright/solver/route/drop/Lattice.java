package org.shelterwright.solver.route.drop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * The planes of all faces in a part of the room, with those of port and target: cheapest runs need no others, as shortest runs
 * among cuboids never do (Hanan's argument), save where a bend needs room; so planes at one and two bend radii from the ends
 * are added.
 */
final class Lattice {
    final int[][] planes = new int[3][];
    private final Box room;
    private final int[][] solids;
    private final int[][] zones;

    Lattice(Surroundings about, Box part, Point start, Target target, int radius) {
        this.room = about.room();
        List<Box> near = new ArrayList<>();
        for (Box solid : about.solids()) {
            if (touches(solid, part)) {
                near.add(solid);
            }
        }
        List<Box> nearZones = about.zones().stream().filter(zone -> touches(zone, part)).toList();
        for (Axis axis : Axis.values()) {
            TreeSet<Integer> found = new TreeSet<>();
            near.forEach(solid -> {
                found.add(solid.low(axis));
                found.add(solid.high(axis));
            });
            spread(found, start.along(axis), radius);
            target.path().forEach(point -> spread(found, point.along(axis), radius));
            found.add(room.low(axis));
            found.add(room.high(axis));
            int low = part.low(axis);
            int high = part.high(axis);
            planes[axis.ordinal()] =
                    found.stream().filter(at -> at >= low && at <= high).mapToInt(at -> at).toArray();
        }
        solids = flat(near);
        zones = flat(nearZones);
    }

    int size(int axis) {
        return planes[axis].length;
    }

    int index(int axis, int value) {
        return Arrays.binarySearch(planes[axis], value);
    }

    /**
     * What a micrometre costs between two neighbouring planes; 0 if no cable can be there.
     *
     * @param axis 0 to 2
     * @param low lower end on that axis (µm)
     * @param high upper end (µm)
     * @param u place on the next axis in turn (µm)
     * @param v place on the one after that (µm)
     */
    int price(int axis, int low, int high, int u, int v) {
        int au = (axis + 1) % 3;
        int av = (axis + 2) % 3;
        int covered = 0;
        for (int[] s : solids) {
            if (s[axis] < high && low < s[axis + 3] && s[au] <= u && u <= s[au + 3] && s[av] <= v && v <= s[av + 3]) {
                boolean uLow = s[au] < u;
                boolean uHigh = u < s[au + 3];
                boolean vLow = s[av] < v;
                boolean vHigh = v < s[av + 3];
                covered |= (uLow && vLow ? 1 : 0)
                        | (uLow && vHigh ? 2 : 0)
                        | (uHigh && vLow ? 4 : 0)
                        | (uHigh && vHigh ? 8 : 0);
                if (covered == 15) {
                    return 0;
                }
            }
        }
        boolean zone = inZone(axis, low, high, au, u, av, v);
        int z = au == 2 ? u : av == 2 ? v : -1;
        if (z == room.z0()) {
            return zone ? Laying.HANGING_IN_ZONE : Laying.FLOOR;
        }
        boolean wall = onWall(au, u) || onWall(av, v);
        if (covered != 0 || wall) {
            return zone ? Laying.SURFACE_IN_ZONE : Laying.SURFACE;
        }
        return zone ? Laying.HANGING_IN_ZONE : Laying.HANGING;
    }

    private boolean inZone(int axis, int low, int high, int au, int u, int av, int v) {
        for (int[] s : zones) {
            if (s[axis] < high && low < s[axis + 3] && s[au] < u && u < s[au + 3] && s[av] < v && v < s[av + 3]) {
                return true;
            }
        }
        return false;
    }

    private boolean onWall(int axis, int at) {
        Axis one = Axis.values()[axis];
        return at == room.low(one) || at == room.high(one);
    }

    private static void spread(TreeSet<Integer> found, int at, int radius) {
        for (int times = -2; times <= 2; times++) {
            found.add(at + times * radius);
        }
    }

    private static int[][] flat(List<Box> boxes) {
        return boxes.stream()
                .map(box -> new int[] {box.x0(), box.y0(), box.z0(), box.x1(), box.y1(), box.z1()})
                .toArray(int[][]::new);
    }

    private static boolean touches(Box a, Box b) {
        return a.x0() <= b.x1()
                && b.x0() <= a.x1()
                && a.y0() <= b.y1()
                && b.y0() <= a.y1()
                && a.z0() <= b.z1()
                && b.z0() <= a.z1();
    }
}
