package org.shelterwright.solver.fit.model;

import org.shelterwright.catalog.item.Purpose;

/**
 * The compiled pair limits: what two units do to each other, as a depth (µm) in one situation. A test holds each equal to
 * its limit class. The shift is always that of the second against the first (µm).
 */
public final class PairTerms {
    private PairTerms() {}

    /** Depth to which solids of one stand in solids of the other. */
    public static int overlap(Shape a, Shape b, int dx, int dy, int dz) {
        return Depths.depth(a.hull(), 0, b.hull(), 0, dx, dy, dz) == 0
                ? 0
                : Depths.greatest(a.solids(), b.solids(), b.hull(), dx, dy, dz);
    }

    /** How many holes of the body both need; only for units that touch or overlap. */
    public static int sharedHoles(Option a, Option b, int dx, int dy, int dz) {
        int[] one = a.holes();
        int[] other = b.holes();
        int shared = 0;
        if (apart(a.holeReach(), b.holeReach(), dx, dy, dz)) {
            return 0;
        }
        for (int i = 0; i < one.length; i += 3) {
            for (int j = 0; j < other.length; j += 3) {
                if (one[i] == other[j] + dx && one[i + 1] == other[j + 1] + dy && one[i + 2] == other[j + 2] + dz) {
                    shared++;
                }
            }
        }
        return shared;
    }

    private static boolean apart(int[] a, int[] b, int dx, int dy, int dz) {
        return a[3] < b[0] + dx
                || b[3] + dx < a[0]
                || a[4] < b[1] + dy
                || b[4] + dy < a[1]
                || a[5] < b[2] + dz
                || b[5] + dz < a[2];
    }

    /**
     * Depth to which solids of an intruder stand in clear zones of an owner.
     *
     * @param seat whether the intruder is a seat, which may stand in seat zones
     * @param onTop whether the intruder stands on the owner, and so may stand in its service zones
     */
    public static int zonesFree(Shape owner, Shape intruder, boolean seat, boolean onTop, int dx, int dy, int dz) {
        int worst = 0;
        int[] zones = owner.zones();
        int[] solids = intruder.solids();
        for (int i = 0; i < zones.length; i += 6) {
            Purpose purpose = owner.purposes()[i / 6];
            if (purpose == Purpose.SEAT && seat || purpose == Purpose.SERVICE && onTop) {
                continue;
            }
            boolean near = solids.length == 6 || Depths.depth(zones, i, intruder.hull(), 0, dx, dy, dz) > 0;
            for (int j = 0; j < solids.length && near; j += 6) {
                worst = Math.max(worst, Depths.depth(zones, i, solids, j, dx, dy, dz));
            }
        }
        return worst;
    }

    /** Depth to which solids of an intruder stand where plugs of an owner go; on station. */
    public static int plugsFree(Shape owner, Shape intruder, int dx, int dy, int dz) {
        return owner.plugs().length == 0
                ? 0
                : Depths.greatest(owner.plugs(), intruder.solids(), intruder.hull(), dx, dy, dz);
    }

    /** Depth to which two seat zones share space; a seat drawn up to a work place is no second place. */
    public static int seatsApart(Option a, Option b, int dx, int dy, int dz) {
        if (a.seat() != b.seat() || !a.workPlace() || !b.workPlace()) {
            return 0;
        }
        int worst = 0;
        Shape one = a.station();
        Shape other = b.station();
        for (int i = 0; i < one.purposes().length; i++) {
            for (int j = 0; j < other.purposes().length && one.purposes()[i] == Purpose.SEAT; j++) {
                if (other.purposes()[j] == Purpose.SEAT) {
                    worst = Math.max(worst, Depths.depth(one.zones(), 6 * i, other.zones(), 6 * j, dx, dy, dz));
                }
            }
        }
        return worst;
    }

    /**
     * What lacks in the height over the seat zones of an owner below solids of another: the most over both.
     *
     * @param needed height above the floor that must stay free
     * @param floor height of the floor, from the low corner of the owner
     */
    public static int seatHeadroom(Option owner, Option other, int needed, int floor, int dx, int dy, int dz) {
        if (other.seat() || needed == 0 || !owner.workPlace()) {
            return 0;
        }
        int worst = 0;
        Shape keeper = owner.station();
        int[] zones = keeper.zones();
        int[] solids = other.station().solids();
        for (int i = 0; i < zones.length; i += 6) {
            for (int j = 0; j < solids.length && keeper.purposes()[i / 6] == Purpose.SEAT; j += 6) {
                boolean over = solids[j] + dx < zones[i + 3]
                        && zones[i] < solids[j + 3] + dx
                        && solids[j + 1] + dy < zones[i + 4]
                        && zones[i + 1] < solids[j + 4] + dy
                        && solids[j + 5] + dz > zones[i + 2];
                if (over) {
                    int there = Math.max(0, solids[j + 2] + dz - floor);
                    worst = Math.max(worst, needed - there);
                }
            }
        }
        return worst;
    }

    /** Sum of the depths to which movable parts of one move through exit zones of the other. */
    public static int exitsCrossed(Option a, Option b, int dx, int dy, int dz) {
        if (!(a.exitZone() && b.swing()) && !(a.swing() && b.exitZone())) {
            return 0;
        }
        int sum = 0;
        Shape one = a.station();
        Shape other = b.station();
        for (int i = 0; i < one.purposes().length; i++) {
            Purpose wanted = one.purposes()[i] == Purpose.EXIT
                    ? Purpose.SWING
                    : one.purposes()[i] == Purpose.SWING ? Purpose.EXIT : null;
            for (int j = 0; j < other.purposes().length && wanted != null; j++) {
                if (other.purposes()[j] == wanted) {
                    sum += Depths.depth(one.zones(), 6 * i, other.zones(), 6 * j, dx, dy, dz);
                }
            }
        }
        return sum;
    }
}
