package org.shelterwright.solver.bench.micro;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
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
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** The live ledger after one move: unit after unit of a known solution is pushed by 25 mm and put back. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 10, time = 1)
@Measurement(iterations = 5, time = 1)
public class LedgerAfterMove {
    @Param({"10", "20", "40", "60", "80"})
    private int units;

    private LedgerBuilder builder;
    private Scene scene;
    private List<Placement> moves;
    private int next;

    /** Filled by {@link #plant}. */
    @SuppressWarnings("NullAway.Init")
    public LedgerAfterMove() {}

    @Setup
    public void plant() {
        Checker checker = Checker.standard();
        Layout layout = PlantedFit.of(1, units, 0.1).solution();
        builder = new LedgerBuilder(checker.book());
        scene = checker.scene(layout);
        builder.update(scene);
        moves = new ArrayList<>();
        for (Placement placement : layout.placements().values()) {
            Place place = placement.station();
            Point push = new Point(25 * Lengths.MM, 0, 0);
            moves.add(placement.withStation(place.with(place.pose().moved(push))));
            moves.add(placement);
        }
    }

    @Benchmark
    public Ledger move() {
        scene = scene.with(moves.get(next));
        next = (next + 1) % moves.size();
        return builder.update(scene);
    }
}
