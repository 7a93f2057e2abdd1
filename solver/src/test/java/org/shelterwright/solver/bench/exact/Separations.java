package org.shelterwright.solver.bench.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.NoOverlap2dConstraint;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.shelterwright.solver.fit.model.Shape;

/**
 * Keeps cuboids of two units apart: one literal for each side on which one may lie of the other, at least one of them
 * true. Solids that always reach down to the floor share one no-overlap constraint on the floor instead.
 */
final class Separations {
    private final CpModel model;
    private final List<ExactUnit> units;
    private final long step;

    Separations(CpModel model, List<ExactUnit> units, long step) {
        this.model = model;
        this.units = units;
        this.step = step;
    }

    void add() {
        addFloor();
        for (int i = 0; i < units.size(); i++) {
            for (int j = i + 1; j < units.size(); j++) {
                apart(units.get(i), Shape::solids, units.get(j), Shape::solids);
                apart(units.get(i), Shape::zones, units.get(j), Shape::solids);
                apart(units.get(i), Shape::solids, units.get(j), Shape::zones);
            }
        }
    }

    private void addFloor() {
        NoOverlap2dConstraint floor = model.addNoOverlap2D();
        for (ExactUnit unit : units) {
            for (int box = 0; box < count(unit, Shape::solids); box++) {
                for (int w = 0; w < unit.ways().size() && onFloor(unit, Shape::solids, box); w++) {
                    int[] solids = unit.ways().get(w).option().station().solids();
                    floor.addRectangle(interval(unit, w, 0, solids, 6 * box), interval(unit, w, 1, solids, 6 * box));
                }
            }
        }
    }

    private IntervalVar interval(ExactUnit unit, int way, int axis, int[] boxes, int at) {
        return model.newOptionalFixedSizeIntervalVar(
                LinearExpr.affine(unit.at(axis), 1, boxes[at + axis] / step),
                (boxes[at + 3 + axis] - boxes[at + axis]) / step,
                unit.taken(way),
                "interval");
    }

    private static boolean onFloor(ExactUnit unit, Function<Shape, int[]> boxes, int box) {
        return unit.greatest(2, bound(boxes, box, 2)) == 0;
    }

    private void apart(ExactUnit a, Function<Shape, int[]> boxesA, ExactUnit b, Function<Shape, int[]> boxesB) {
        boolean solids = boxesA.apply(a.ways().get(0).option().station()).length > 0;
        for (int i = 0; solids && i < count(a, boxesA); i++) {
            for (int j = 0; j < count(b, boxesB); j++) {
                apart(a, boxesA, i, b, boxesB, j);
            }
        }
    }

    private void apart(
            ExactUnit a, Function<Shape, int[]> boxesA, int i, ExactUnit b, Function<Shape, int[]> boxesB, int j) {
        List<Literal> sides = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            sides.addAll(before(a, boxesA, i, b, boxesB, j, axis));
            sides.addAll(before(b, boxesB, j, a, boxesA, i, axis));
        }
        model.addBoolOr(sides.toArray(Literal[]::new));
    }

    /** The literal that a cuboid lies before another on an axis; none if it never can. */
    private List<Literal> before(
            ExactUnit a,
            Function<Shape, int[]> boxesA,
            int i,
            ExactUnit b,
            Function<Shape, int[]> boxesB,
            int j,
            int axis) {
        ToLongFunction<Way> high = bound(boxesA, i, axis + 3);
        ToLongFunction<Way> low = bound(boxesB, j, axis);
        if (a.least(axis, high) > b.greatest(axis, low)) {
            return List.of();
        }
        if (a.greatest(axis, high) <= b.least(axis, low)) {
            return List.of(model.trueLiteral());
        }
        BoolVar side = model.newBoolVar("side");
        model.addLessOrEqual(a.plus(axis, high), b.plus(axis, low)).onlyEnforceIf(side);
        return List.of(side);
    }

    private static int count(ExactUnit unit, Function<Shape, int[]> boxes) {
        return boxes.apply(unit.ways().get(0).option().station()).length / 6;
    }

    private static ToLongFunction<Way> bound(Function<Shape, int[]> boxes, int box, int coordinate) {
        return way -> boxes.apply(way.option().station())[6 * box + coordinate];
    }
}
