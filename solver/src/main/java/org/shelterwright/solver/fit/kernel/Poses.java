package org.shelterwright.solver.fit.kernel;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/** Where every slot is, and which carry others (µm). Axes are numbered from zero. Not for several threads. */
abstract class Poses {
    final Option[] option;
    final int[] optionNumber;
    final int[] x;
    final int[] y;
    final int[] z;
    final boolean[] placed;
    private final FitProblem problem;
    private final int[] guests;
    private int unplaced;

    Poses(FitProblem problem) {
        int n = problem.size();
        this.problem = problem;
        this.unplaced = n;
        this.option = new Option[n];
        this.optionNumber = new int[n];
        this.x = new int[n];
        this.y = new int[n];
        this.z = new int[n];
        this.placed = new boolean[n];
        this.guests = new int[n];
    }

    public FitProblem problem() {
        return problem;
    }

    public boolean isPlaced(int slot) {
        return placed[slot];
    }

    /** Whether nothing is placed. */
    public boolean isEmpty() {
        return unplaced == placed.length;
    }

    int unplaced() {
        return unplaced;
    }

    public int guestsOf(int slot) {
        return guests[slot];
    }

    public QuarterTurn turn(int slot) {
        return option[slot].turn();
    }

    void stand(int slot, int number, int px, int py, int pz) {
        leave(slot);
        Option taken = problem.slot(slot).options().get(number);
        Option.Berth berth = taken.berth();
        if (berth != null) {
            guests[berth.slot()]++;
        }
        option[slot] = taken;
        optionNumber[slot] = number;
        x[slot] = px;
        y[slot] = py;
        z[slot] = pz;
        placed[slot] = true;
        unplaced--;
    }

    void leave(int slot) {
        if (placed[slot]) {
            Option.Berth berth = option[slot].berth();
            if (berth != null) {
                guests[berth.slot()]--;
            }
            placed[slot] = false;
            unplaced++;
        }
    }

    /** The spot of a slot; {@code null} if it is not placed. */
    public @Nullable Spot spot(int slot) {
        return placed[slot] ? new Spot(optionNumber[slot], x[slot], y[slot], z[slot]) : null;
    }

    /** The spots of all slots. */
    public @Nullable Spot[] spots() {
        @Nullable Spot[] spots = new Spot[placed.length];
        for (int i = 0; i < spots.length; i++) {
            spots[i] = spot(i);
        }
        return spots;
    }

    /** Low end of the turned size of a slot on an axis. */
    int low(int slot, int axis) {
        return axis == 0 ? x[slot] : axis == 1 ? y[slot] : z[slot];
    }

    /** High end of the turned size of a slot on an axis. */
    int high(int slot, int axis) {
        return low(slot, axis) + length(slot, axis);
    }

    /** Turned size of a slot on an axis. */
    int length(int slot, int axis) {
        Size size = option[slot].size();
        return axis == 0 ? size.x() : axis == 1 ? size.y() : size.z();
    }

    /** Whether two slots are there in one situation. */
    boolean meet(int i, int j) {
        Slot a = problem.slot(i);
        Slot b = problem.slot(j);
        return a.onStation() && b.onStation() || a.onTheRoad() && b.onTheRoad();
    }

    /** Whether the sizes of two slots overlap on both axes but one. */
    boolean abreast(int i, int j, int but) {
        for (int axis = 0; axis < 3; axis++) {
            if (axis != but && (low(i, axis) >= high(j, axis) || low(j, axis) >= high(i, axis))) {
                return false;
            }
        }
        return true;
    }
}
