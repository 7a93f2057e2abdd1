package org.shelterwright.app.desk.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Snapping against a plain twin that looks at every hole of the body and every face of every unit. */
class SnappingTest {
    private static final int ROUNDS = 120;

    @ParameterizedTest
    @CsvSource({"river-post, 1, ON_STATION", "water-lab, 2, ON_STATION", "river-post, 3, ON_THE_ROAD"})
    void what_is_caught_is_what_a_search_of_every_hole_and_face_finds(String sample, int seed, Situation situation) {
        Scene scene = Checker.standard()
                .scene(LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout());
        Random random = new Random(seed);
        int holes = 0;
        int stops = 0;
        int lines = 0;
        for (int round = 0; round < ROUNDS; round++) {
            PlacedUnit unit = scene.units().get(random.nextInt(scene.units().size()));
            int tolerance = random.nextInt(60);
            int grid = List.of(0, 10, 50).get(random.nextInt(3)) * Lengths.MM;
            Moving moving = Moving.of(scene, Set.of(unit.id()), situation).orElseThrow();
            Snapping snapping = new Snapping(moving, new Catching(tolerance, grid));
            Point wanted = unit.pose(situation).at();
            for (Axis axis : snapping.along()) {
                wanted = wanted.with(axis, wanted.along(axis) + random.nextInt(400_001) - 200_000);
            }
            wanted = snapping.within(wanted);
            String what = "round %d of seed %d: %s to %s, tolerance %d, grid %d"
                    .formatted(round, seed, unit.id(), wanted, tolerance, grid);

            Snapping.Caught caught = snapping.at(wanted, snapping.along());

            assertThat(snapping.at(wanted, snapping.along())).as(what).isEqualTo(caught);
            for (Axis axis : Axis.values()) {
                int way = Math.abs(caught.at().along(axis) - wanted.along(axis));
                assertThat(way).as(what).isLessThanOrEqualTo(snapping.along().contains(axis) ? tolerance * 1000 : 0);
            }
            long nearest = nearestHole(scene, moving, snapping, wanted, tolerance * 1000, snapping.along());
            List<Catch.Kind> kinds = caught.catches().stream().map(Catch::kind).toList();
            assertThat(kinds.contains(Catch.Kind.HOLE)).as(what).isEqualTo(nearest >= 0);
            if (nearest >= 0) {
                assertThat(lands(scene, moving, caught.at())).as(what).isTrue();
                assertThat(way(caught.at(), wanted)).as(what).isGreaterThanOrEqualTo(nearest);
                holes++;
            } else {
                nothingIsNearer(moving, snapping, wanted, caught, tolerance * 1000, grid, what);
                stops += kinds.contains(Catch.Kind.FACE) || kinds.contains(Catch.Kind.WALL) ? 1 : 0;
                lines += kinds.contains(Catch.Kind.GRID) ? 1 : 0;
            }
        }
        assertThat(List.of(holes, stops, lines))
                .as("caught holes, faces, grid lines")
                .allMatch(count -> count > 3);
    }

    /** Sum of the ways to the nearest place where all fixings land; -1 if there is none within the tolerance. */
    private static long nearestHole(
            Scene scene, Moving moving, Snapping snapping, Point wanted, int tolerance, Set<Axis> free) {
        if (fixings(moving).isEmpty()) {
            return -1;
        }
        long best = -1;
        for (int x : values(Axis.X, scene, moving, wanted, free.contains(Axis.X) ? tolerance : 0)) {
            for (int y : values(Axis.Y, scene, moving, wanted, free.contains(Axis.Y) ? tolerance : 0)) {
                for (int z : values(Axis.Z, scene, moving, wanted, free.contains(Axis.Z) ? tolerance : 0)) {
                    Point at = new Point(x, y, z);
                    boolean nearer = best < 0 || way(at, wanted) < best;
                    if (nearer && snapping.within(at).equals(at) && lands(scene, moving, at)) {
                        best = way(at, wanted);
                    }
                }
            }
        }
        return best;
    }

    /** Where on an axis something of the body begins or ends to take some fixing. */
    private static Set<Integer> values(Axis axis, Scene scene, Moving moving, Point wanted, int tolerance) {
        Set<Integer> values = new TreeSet<>(Set.of(wanted.along(axis)));
        for (HardPoint hardPoint : scene.body().hardPoints()) {
            for (PlacedFixing fixing : fixings(moving)) {
                for (Point place : places(hardPoint)) {
                    values.add(place.along(axis) - fixing.at().along(axis));
                }
            }
        }
        values.removeIf(value -> Math.abs(value - wanted.along(axis)) > tolerance);
        return values;
    }

    private static List<Point> places(HardPoint hardPoint) {
        if (!(hardPoint instanceof HoleGrid grid)) {
            return List.of(hardPoint.outline().low(), hardPoint.outline().high());
        }
        List<Point> places = new ArrayList<>();
        for (int hole = 0; hole < grid.count(); hole++) {
            places.add(grid.hole(hole, 0));
        }
        for (int row = 0; row < grid.rows(); row++) {
            places.add(grid.hole(0, row));
        }
        return places;
    }

    private static boolean lands(Scene scene, Moving moving, Point at) {
        return fixings(moving).stream()
                .allMatch(fixing -> scene.body().hardPoints().stream()
                        .anyMatch(hardPoint -> hardPoint.takes(
                                fixing.at().plus(at),
                                fixing.face(),
                                fixing.fixing().thread())));
    }

    /** Those that go into the body, as if the low corner of the unit were at the origin. */
    private static List<PlacedFixing> fixings(Moving moving) {
        Point low = moving.leader().pose(moving.situation()).at();
        return PlacedFixing.of(moving.leader(), moving.situation()).stream()
                .filter(fixing -> !fixing.intoHost())
                .map(fixing ->
                        new PlacedFixing(fixing.fixing(), fixing.at().minus(low), fixing.face(), fixing.slot(), false))
                .toList();
    }

    private static void nothingIsNearer(
            Moving moving,
            Snapping snapping,
            Point wanted,
            Snapping.Caught caught,
            int tolerance,
            int grid,
            String what) {
        Point tentative = wanted;
        for (Axis axis : snapping.along()) {
            int wish = wanted.along(axis);
            int way = Math.abs(caught.at().along(axis) - wish);
            Box box = snapping.filled(tentative);
            int inset = box.low(axis) - tentative.along(axis);
            for (Neighbour one : snapping.neighbours()) {
                boolean faces = one.surface() ? one.box().extent(axis) == 0 : one.faces(box, axis);
                if (faces) {
                    int after = one.box().high(axis) - inset;
                    int before = one.box().low(axis) - box.extent(axis) - inset;
                    for (int stop : one.surface()
                            ? List.of(one.box().high(axis) == 0 ? after : before)
                            : List.of(after, before)) {
                        boolean reachable =
                                snapping.within(tentative.with(axis, stop)).along(axis) == stop;
                        if (reachable && Math.abs(stop - wish) <= tolerance) {
                            assertThat(way)
                                    .as(what + " on " + axis + " at " + one)
                                    .isLessThanOrEqualTo(Math.abs(stop - wish));
                        }
                    }
                }
            }
            if (way > 0 && caught.catches().stream().allMatch(one -> one.kind() == Catch.Kind.GRID)) {
                assertThat(caught.at().along(axis) % grid).as(what).isZero();
                assertThat(way).as(what).isLessThanOrEqualTo(grid / 2);
            }
            tentative = tentative.with(axis, caught.at().along(axis));
        }
    }

    private static long way(Point one, Point other) {
        Point way = one.minus(other);
        return (long) Math.abs(way.x()) + Math.abs(way.y()) + Math.abs(way.z());
    }
}
