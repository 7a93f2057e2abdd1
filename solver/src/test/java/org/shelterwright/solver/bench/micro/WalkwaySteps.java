package org.shelterwright.solver.bench.micro;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.access.WayWidths;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** One exact answer to how wide the ways from the door to the service zones of a known solution are, up to 500 mm. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WalkwaySteps {
    private static final int WIDTH = 500 * Lengths.MM;
    private static final int HEADROOM = 1900 * Lengths.MM;

    /** Ways are told apart by an eighth of the width, as in the search. */
    private static final int STEPS = 8;

    @Param({"10", "20", "40", "60", "80"})
    private int units;

    private WayWidths widths;
    private int[] obstacles;
    private int[] doors;
    private int[] targets;

    /** Filled by {@link #plant}. */
    @SuppressWarnings("NullAway.Init")
    public WalkwaySteps() {}

    @Setup
    public void plant() {
        Scene scene = Checker.standard().scene(PlantedFit.of(1, units, 0.1).solution());
        List<PlacedUnit> placed = scene.units();
        Size room = scene.body().inside();
        widths = new WayWidths(room.x(), room.y(), WIDTH / STEPS);
        obstacles = flat(placed.stream()
                .flatMap(unit -> unit.solids(Situation.ON_STATION).stream())
                .filter(solid -> solid.z0() < HEADROOM)
                .toList());
        doors = flat(
                scene.body().openings().stream().map(opening -> opening.area()).toList());
        targets = flat(placed.stream()
                .flatMap(unit -> unit.zones(Situation.ON_STATION).stream())
                .map(PlacedZone::box)
                .toList());
    }

    private static int[] flat(List<Box> boxes) {
        return boxes.stream()
                .flatMapToInt(box -> IntStream.of(box.x0(), box.y0(), box.x1(), box.y1()))
                .toArray();
    }

    @Benchmark
    public int reach() {
        // Another floor each time, as after a move: one that is the same costs nothing.
        obstacles[0] ^= 1;
        widths.floor(obstacles, obstacles.length / 4);
        widths.from(doors, 0, doors.length);
        int reached = 0;
        for (int i = 0; i < targets.length; i += 4) {
            reached += widths.widest(targets, i, WIDTH) >= WIDTH ? 1 : 0;
        }
        return reached;
    }
}
