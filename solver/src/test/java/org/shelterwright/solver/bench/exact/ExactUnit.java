package org.shelterwright.solver.bench.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToLongFunction;
import org.shelterwright.solver.fit.model.Spot;

/** One unit in the exact model: a literal for each way and a variable for each coordinate, in grid steps. */
final class ExactUnit {
    private final List<Way> ways;
    private final long step;
    private final BoolVar[] taken;
    private final IntVar[] at = new IntVar[3];

    ExactUnit(CpModel model, String name, List<Way> ways, long step) {
        this.ways = ways;
        this.step = step;
        this.taken = new BoolVar[ways.size()];
        for (int w = 0; w < taken.length; w++) {
            taken[w] = model.newBoolVar(name + " way " + w);
        }
        model.addExactlyOne(taken);
        for (int axis = 0; axis < 3; axis++) {
            int a = axis;
            long[] all = ways.stream()
                    .flatMapToLong(way -> Arrays.stream(way.coordinates(a)))
                    .map(value -> value / step)
                    .sorted()
                    .distinct()
                    .toArray();
            at[axis] = model.newIntVarFromDomain(Domain.fromValues(all), name + " " + "xyz".charAt(axis));
            for (int w = 0; w < taken.length; w++) {
                long[] own = Arrays.stream(ways.get(w).coordinates(axis))
                        .map(value -> value / step)
                        .toArray();
                if (own.length < all.length) {
                    model.addLinearExpressionInDomain(at[axis], Domain.fromValues(own))
                            .onlyEnforceIf(taken[w]);
                }
            }
        }
    }

    List<Way> ways() {
        return ways;
    }

    BoolVar taken(int way) {
        return taken[way];
    }

    IntVar at(int axis) {
        return at[axis];
    }

    /** A coordinate plus a length (µm) that depends on the way, in steps. */
    LinearExpr plus(int axis, ToLongFunction<Way> length) {
        LinearExprBuilder sum = LinearExpr.newBuilder().add(at[axis]);
        for (int w = 0; w < taken.length; w++) {
            sum.addTerm(taken[w], length.applyAsLong(ways.get(w)) / step);
        }
        return sum.build();
    }

    /** The least that such a sum can be, in steps. */
    long least(int axis, ToLongFunction<Way> length) {
        return ways.stream()
                .mapToLong(way -> (way.coordinates(axis)[0] + length.applyAsLong(way)) / step)
                .min()
                .orElseThrow();
    }

    /** The greatest that such a sum can be, in steps. */
    long greatest(int axis, ToLongFunction<Way> length) {
        return ways.stream()
                .mapToLong(way -> {
                    long[] values = way.coordinates(axis);
                    return (values[values.length - 1] + length.applyAsLong(way)) / step;
                })
                .max()
                .orElseThrow();
    }

    /** Proposes a spot to the solver, if it is one of the candidates. */
    void hint(CpModel model, Spot spot) {
        for (int w = 0; w < taken.length; w++) {
            if (ways.get(w).allows(spot)) {
                for (int other = 0; other < taken.length; other++) {
                    model.addHint(taken[other], other == w ? 1 : 0);
                }
                model.addHint(at[0], spot.x() / step);
                model.addHint(at[1], spot.y() / step);
                model.addHint(at[2], spot.z() / step);
                return;
            }
        }
    }

    Spot spot(CpSolver solver) {
        for (int w = 0; w < taken.length; w++) {
            if (solver.booleanValue(taken[w])) {
                return new Spot(
                        ways.get(w).number(),
                        (int) (solver.value(at[0]) * step),
                        (int) (solver.value(at[1]) * step),
                        (int) (solver.value(at[2]) * step));
            }
        }
        throw new IllegalStateException("A unit has no way.");
    }
}
