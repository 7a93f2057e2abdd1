package org.shelterwright.solver.bench.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import java.util.function.ToLongFunction;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.WishTerm;

/**
 * The soft level as a linear objective: centre of mass off the middle and high, and shortfalls of wishes, all times twice
 * the whole mass. Distance in space, which is not linear, is taken from below by flat pieces in several directions.
 */
final class SoftTerms {
    /** Masses are counted in steps of 100 g, so that sums stay small. */
    private static final long GRAMS = 100;

    private static final int WRONG_FRONT = 1_000_000;
    private static final double[][] DIRECTIONS = {
        {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 0}, {1, 0, 1}, {0, 1, 1}, {1, 1, 1}, {2, 1, 0}, {1, 2, 0}, {3, 1, 0},
        {1, 3, 0}
    };
    private static final long SCALE = 1000;

    private final CpModel model;
    private final FitProblem problem;
    private final List<ExactUnit> units;
    private final long step;
    private final LinearExprBuilder sum = LinearExpr.newBuilder();
    private final long longest;

    SoftTerms(CpModel model, FitProblem problem, List<ExactUnit> units, long step) {
        this.model = model;
        this.problem = problem;
        this.units = units;
        this.step = step;
        this.longest =
                (problem.inside().x() + problem.inside().y() + problem.inside().z()) / step;
    }

    /** The objective, to be made least. */
    LinearExpr build() {
        long mass = addBalance();
        for (WishTerm wish : problem.wishes()) {
            addWish(wish, 2 * mass);
        }
        return sum.build();
    }

    private long addBalance() {
        LinearExprBuilder off = LinearExpr.newBuilder();
        long mass = 0;
        for (Slot slot : problem.slots()) {
            Double massKg = slot.item().mass().massKg();
            long its = massKg == null ? 0 : Math.round(massKg * 1000 / GRAMS);
            ExactUnit unit = units.get(slot.index());
            mass += its;
            off.addTerm(unit.at(1), 2 * its);
            sum.addTerm(unit.at(2), its);
            for (int w = 0; w < unit.ways().size(); w++) {
                var centre = unit.ways().get(w).option().centre();
                off.addTerm(unit.taken(w), Math.round(2.0 * its * centre.y() / step));
                sum.addTerm(unit.taken(w), Math.round(1.0 * its * centre.z() / step));
            }
        }
        off.add(-Math.round(1.0 * mass * problem.inside().y() / step));
        IntVar distance = model.newIntVar(0, 4 * mass * longest, "off the middle");
        model.addGreaterOrEqual(LinearExpr.newBuilder().add(distance).add(off).build(), 0);
        model.addGreaterOrEqual(distance, off.build());
        sum.add(distance);
        return mass;
    }

    private void addWish(WishTerm wish, long price) {
        ExactUnit a = units.get(wish.a());
        switch (wish.kind()) {
            case FACING -> {
                for (int w = 0; w < a.ways().size(); w++) {
                    boolean right = a.ways().get(w).option().turn().apply(Face.FRONT) == wish.face();
                    sum.addTerm(a.taken(w), right ? 0 : price * WRONG_FRONT / step);
                }
            }
            case ALONG_WALL -> sum.addTerm(toWall(wish, a), price);
            case NEAR -> sum.addTerm(tooFar(wish, a, units.get(wish.b())), price);
            default ->
                throw new IllegalArgumentException("The wish " + wish.kind() + " is not part of the exact model.");
        }
    }

    private IntVar toWall(WishTerm wish, ExactUnit unit) {
        int axis = wish.face().axis().ordinal();
        IntVar distance = model.newIntVar(0, longest, "to the wall");
        if (wish.face().sign() < 0) {
            model.addGreaterOrEqual(distance, unit.at(axis));
        } else {
            long end = wish.inside().along(wish.face().axis()) / step;
            LinearExprBuilder reached = LinearExpr.newBuilder().add(distance).add(unit.plus(axis, length(axis)));
            model.addGreaterOrEqual(reached.build(), end);
        }
        return distance;
    }

    private IntVar tooFar(WishTerm wish, ExactUnit a, ExactUnit b) {
        IntVar[] gaps = new IntVar[3];
        for (int axis = 0; axis < 3; axis++) {
            gaps[axis] = model.newIntVar(0, longest, "gap");
            atLeast(gaps[axis], b.at(axis), a.plus(axis, length(axis)));
            atLeast(gaps[axis], a.at(axis), b.plus(axis, length(axis)));
        }
        IntVar excess = model.newIntVar(0, longest, "too far");
        for (double[] direction : DIRECTIONS) {
            double norm =
                    Math.sqrt(direction[0] * direction[0] + direction[1] * direction[1] + direction[2] * direction[2]);
            LinearExprBuilder along = LinearExpr.newBuilder();
            for (int axis = 0; axis < 3; axis++) {
                along.addTerm(gaps[axis], (long) (SCALE * direction[axis] / norm));
            }
            along.addTerm(excess, -SCALE);
            model.addLessOrEqual(along.build(), SCALE * wish.distance() / step);
        }
        return excess;
    }

    private void atLeast(IntVar gap, LinearArgument from, LinearExpr to) {
        model.addGreaterOrEqual(LinearExpr.newBuilder().add(gap).add(to).build(), from);
    }

    private static ToLongFunction<Way> length(int axis) {
        return way -> way.option().size().along(Axis.values()[axis]);
    }
}
