package org.shelterwright.solver.route.drop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

class DropSearchTest {
    private static final Box ROOM = new Box(0, 0, 0, 12, 12, 12);

    private static Surroundings room(Box... solids) {
        return new Surroundings(ROOM, List.of(solids), List.of(), List.of());
    }

    private static long length(Drop drop) {
        long length = 0;
        for (int i = 1; i < drop.path().size(); i++) {
            Point a = drop.path().get(i - 1);
            Point b = drop.path().get(i);
            length += Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y()) + Math.abs(a.z() - b.z());
        }
        return length;
    }

    @Test
    void goesStraightUpAWallToTheTray() {
        Drop drop = new DropSearch(room())
                .find(
                        new Point(5, 0, 2),
                        new Target(List.of(new Point(0, 0, 10), new Point(12, 0, 10)), true),
                        1,
                        DropSearch.ANY_COST)
                .orElseThrow();

        assertThat(drop.path()).containsExactly(new Point(5, 0, 2), new Point(5, 0, 10));
        assertThat(drop.cost()).isEqualTo(8L * Laying.SURFACE);
    }

    @Test
    void goesRoundASolidAndAlongTheWallBehindOne() {
        Box solid = new Box(3, 0, 4, 8, 5, 12);
        Target tray = new Target(List.of(new Point(0, 6, 12), new Point(12, 6, 12)), true);

        Drop round = new DropSearch(room(solid))
                .find(new Point(5, 5, 2), tray, 1, DropSearch.ANY_COST)
                .orElseThrow();
        Drop behind = new DropSearch(room(solid))
                .find(new Point(5, 0, 3), Target.port(new Point(5, 0, 11)), 1, DropSearch.ANY_COST)
                .orElseThrow();

        assertThat(round.end()).isEqualTo(new Point(5, 6, 12));
        assertThat(behind.path()).containsExactly(new Point(5, 0, 3), new Point(5, 0, 11));
    }

    @Test
    void doesNotSqueezeBetweenTwoUnitsThatTouch() {
        Box left = new Box(0, 2, 0, 6, 12, 12);
        Box right = new Box(6, 2, 0, 12, 12, 12);

        Optional<Drop> drop = new DropSearch(room(left, right))
                .find(new Point(6, 2, 5), Target.port(new Point(6, 11, 5)), 1, DropSearch.ANY_COST);

        assertThat(drop).isEmpty();
    }

    @Test
    void leavesRoomForTheBend() {
        Target tray = new Target(List.of(new Point(0, 2, 10), new Point(12, 2, 10)), true);

        Drop drop = new DropSearch(room())
                .find(new Point(5, 0, 2), tray, 2, DropSearch.ANY_COST)
                .orElseThrow();

        List<Point> path = drop.path();
        for (int i = 1; i < path.size(); i++) {
            int leg = Math.abs(path.get(i).x() - path.get(i - 1).x())
                    + Math.abs(path.get(i).y() - path.get(i - 1).y())
                    + Math.abs(path.get(i).z() - path.get(i - 1).z());
            assertThat(leg).as("leg %d of %s", i, path).isGreaterThanOrEqualTo(i == 1 ? 2 : 4);
        }
    }

    @Test
    void costsAsMuchAsAPlainSearchOverAllUnitSteps() {
        for (long seed = 1; seed <= 150; seed++) {
            Random random = new Random(seed);
            List<Box> solids = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                int x = random.nextInt(9);
                int y = random.nextInt(9);
                int z = random.nextInt(9);
                solids.add(new Box(
                        x,
                        y,
                        z,
                        x + 1 + random.nextInt(12 - x),
                        y + 1 + random.nextInt(12 - y),
                        z + 1 + random.nextInt(12 - z)));
            }
            List<Box> zones = List.of();
            Surroundings about = new Surroundings(ROOM, solids, zones, List.of());
            Point start = new Point(random.nextInt(13), random.nextInt(13), random.nextInt(13));
            Point end = new Point(random.nextInt(13), random.nextInt(13), random.nextInt(13));

            Optional<Drop> found = new DropSearch(about).find(start, Target.port(end), 0, DropSearch.ANY_COST);
            long least = plain(about, start, end);

            assertThat(found.map(Drop::cost).orElse(-1L)).as("seed %d", seed).isEqualTo(least);
            found.ifPresent(drop -> assertThat(length(drop)).isLessThanOrEqualTo(drop.cost()));
        }
    }

    @Test
    void withBendsItCostsAsMuchAsAPlainSearchOverTheSamePlanes() {
        int found = 0;
        for (long seed = 1; seed <= 400; seed++) {
            Random random = new Random(seed);
            int unit = 20_000;
            List<Box> solids = new ArrayList<>();
            random(random).solids().forEach(box -> solids.add(times(box, unit)));
            Surroundings about = new Surroundings(times(ROOM, unit), solids, List.of(), List.of());
            Point start = times(point(random), unit);
            List<Point> line = tray(random).path().stream()
                    .map(point -> times(point, unit))
                    .toList();
            Target target = random.nextInt(3) == 0 ? Target.port(line.get(0)) : new Target(line, true);
            int radius = unit / 2 * (1 + random.nextInt(5));

            Optional<Drop> drop = new DropSearch(about).find(start, target, radius, DropSearch.ANY_COST);

            Lattice lattice = new Lattice(Obstacles.of(about), about.room(), start, target, radius);
            assertThat(drop.map(Drop::cost).orElse(-1L))
                    .as("seed %d", seed)
                    .isEqualTo(plain(lattice, start, target, radius));
            found += drop.isPresent() ? 1 : 0;
        }
        assertThat(found).isGreaterThan(150);
    }

    private static Point times(Point point, int unit) {
        return new Point(point.x() * unit, point.y() * unit, point.z() * unit);
    }

    private static Box times(Box box, int unit) {
        return new Box(
                box.x0() * unit, box.y0() * unit, box.z0() * unit, box.x1() * unit, box.y1() * unit, box.z1() * unit);
    }

    /** Dijkstra over nodes, directions and the straight that is due, without estimates; -1 if there is no way. */
    private static long plain(Lattice lattice, Point start, Target target, int radius) {
        record At(int node, int direction, int need, long cost) {}
        PriorityQueue<At> queue = new PriorityQueue<>((a, b) -> Long.compare(a.cost(), b.cost()));
        Map<String, Long> best = new HashMap<>();
        queue.add(new At(lattice.node(start), -1, 0, 0));
        int[] index = new int[3];
        while (!queue.isEmpty()) {
            At at = queue.poll();
            if (at.cost() > best.getOrDefault(at.node() + " " + at.direction() + " " + at.need(), Long.MAX_VALUE)) {
                continue;
            }
            lattice.indices(at.node(), index);
            if (lattice.onTarget(at.node(), index)) {
                var line = lattice.along(at.node(), target);
                boolean turns = target.tray() && (line == null || line.ordinal() != at.direction() / 2);
                if (at.direction() < 0 || at.need() <= (turns ? 0 : radius)) {
                    return at.cost();
                }
            }
            for (int d = 0; d < 6; d++) {
                boolean turn = at.direction() >= 0 && at.direction() != d;
                if (lattice.price(at.node(), d) == 0 || turn && (at.direction() / 2 == d / 2 || at.need() > 0)) {
                    continue;
                }
                int there = index[d / 2] + (d % 2 == 1 ? 1 : -1);
                int length = lattice.length(d / 2, index[d / 2], there);
                int due = at.direction() < 0 ? radius : turn ? 2 * radius : at.need();
                At next = new At(
                        lattice.next(at.node(), d),
                        d,
                        Math.max(0, due - length),
                        at.cost() + (long) length * lattice.price(at.node(), d) + (turn ? Laying.CORNER : 0));
                String key = next.node() + " " + d + " " + next.need();
                if (next.cost() < best.getOrDefault(key, Long.MAX_VALUE)) {
                    best.put(key, next.cost());
                    queue.add(next);
                }
            }
        }
        return -1;
    }

    @Test
    void aLimitLeavesOutWhatCostsMoreAndChangesNothingElse() {
        for (long seed = 1; seed <= 150; seed++) {
            Random random = new Random(seed);
            Surroundings about = random(random);
            Point start = point(random);
            Target tray = tray(random);
            int radius = random.nextInt(3);
            Optional<Drop> any = new DropSearch(about).find(start, tray, radius, DropSearch.NEAR);
            long cost = any.map(Drop::cost).orElse(1_000_000L);
            for (long limit : new long[] {cost / 2, cost - 1, cost, cost + 1, 2 * cost}) {
                Optional<Drop> within = new DropSearch(about).find(start, tray, radius, limit);

                assertThat(within)
                        .as("seed %d, limit %d of %d", seed, limit, cost)
                        .isEqualTo(limit < cost ? Optional.empty() : any);
            }
        }
    }

    private static Surroundings random(Random random) {
        List<Box> solids = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            Point a = point(random);
            Point b = point(random);
            Box box = new Box(
                    Math.min(a.x(), b.x()),
                    Math.min(a.y(), b.y()),
                    Math.min(a.z(), b.z()),
                    Math.max(a.x(), b.x()),
                    Math.max(a.y(), b.y()),
                    Math.max(a.z(), b.z()));
            if (box.x1() > box.x0() && box.y1() > box.y0() && box.z1() > box.z0()) {
                solids.add(box);
            }
        }
        return room(solids.toArray(Box[]::new));
    }

    private static Point point(Random random) {
        return new Point(random.nextInt(13), random.nextInt(13), random.nextInt(13));
    }

    private static Target tray(Random random) {
        int y = random.nextInt(13);
        int z = random.nextInt(13);
        return new Target(List.of(new Point(random.nextInt(5), y, z), new Point(6 + random.nextInt(7), y, z)), true);
    }

    /** Dijkstra over all unit steps and directions, prices worked out afresh; -1 if there is no way. */
    private static long plain(Surroundings about, Point start, Point end) {
        record At(Point point, int direction, long cost) {}
        PriorityQueue<At> queue = new PriorityQueue<>((a, b) -> Long.compare(a.cost(), b.cost()));
        Map<String, Long> best = new HashMap<>();
        queue.add(new At(start, -1, 0));
        int[][] steps = {{-1, 0, 0}, {1, 0, 0}, {0, -1, 0}, {0, 1, 0}, {0, 0, -1}, {0, 0, 1}};
        while (!queue.isEmpty()) {
            At at = queue.poll();
            if (at.point().equals(end)) {
                return at.cost();
            }
            for (int d = 0; d < 6; d++) {
                Point next = new Point(
                        at.point().x() + steps[d][0],
                        at.point().y() + steps[d][1],
                        at.point().z() + steps[d][2]);
                boolean back = at.direction() >= 0 && at.direction() / 2 == d / 2 && at.direction() != d;
                if (back || !ROOM.contains(next)) {
                    continue;
                }
                int price = price(about, at.point(), next, d / 2);
                long cost = at.cost() + price + (at.direction() >= 0 && at.direction() != d ? Laying.CORNER : 0);
                String key = next + " " + d;
                if (price > 0 && cost < best.getOrDefault(key, Long.MAX_VALUE)) {
                    best.put(key, cost);
                    queue.add(new At(next, d, cost));
                }
            }
        }
        return -1;
    }

    private static int price(Surroundings about, Point a, Point b, int axis) {
        // The four unit columns round the step, by their low corners.
        int blocked = 0;
        int inside = 0;
        int filled = 0;
        int[] low = {Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z())};
        int u = (axis + 1) % 3;
        int v = (axis + 2) % 3;
        boolean zone = true;
        for (int du = -1; du <= 0; du++) {
            for (int dv = -1; dv <= 0; dv++) {
                int[] c = low.clone();
                c[u] += du;
                c[v] += dv;
                boolean outside = c[u] < 0 || c[u] > 11 || c[v] < 0 || c[v] > 11;
                Box cell = new Box(c[0], c[1], c[2], c[0] + 1, c[1] + 1, c[2] + 1);
                boolean solid = about.solids().stream().anyMatch(one -> one.overlaps(cell));
                filled += solid ? 1 : 0;
                inside += outside ? 0 : 1;
                blocked += solid ? 1 : 0;
                zone &= about.zones().stream().anyMatch(one -> one.overlaps(cell));
            }
        }
        if (blocked == 4) {
            return 0;
        }
        boolean floor = axis != 2 && low[2] == 0;
        if (floor) {
            return zone ? Laying.HANGING_IN_ZONE : Laying.FLOOR;
        }
        if (filled > 0 || inside < 4) {
            return zone ? Laying.SURFACE_IN_ZONE : Laying.SURFACE;
        }
        return zone ? Laying.HANGING_IN_ZONE : Laying.HANGING;
    }
}
