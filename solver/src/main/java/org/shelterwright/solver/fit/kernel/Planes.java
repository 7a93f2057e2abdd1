package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.model.Plane;

/** The tangents that one lane knows: a few of the newest for each row. Not for several threads. */
public final class Planes {
    private static final int A_ROW = 4;

    /** A constant and the factors of four moments, all in one situation. */
    private static final int FACTORS = 5;

    /** Less than this is rounding (thousandths of a mm or kg). */
    private static final double ROUNDING = 1e-6;

    private final MomentLimits limits;
    private final MomentLimits.Register register = new MomentLimits.Register();
    private final List<List<Plane>> ofRow = new ArrayList<>();
    private double[] factors = {};
    private int[] firstMoment = {};
    private int[] ends = {};
    private boolean[] hard = {};

    public Planes(MomentLimits limits) {
        this.limits = limits;
    }

    /** Takes new tangents at a state, and has the state priced by them. */
    public void touch(State state) {
        if (limits.isEmpty()) {
            return;
        }
        var scene = state.problem().scene(state.spots());
        for (Plane plane : limits.tangents(scene, state.moments(true), state.moments(false), register)) {
            while (ofRow.size() <= plane.row()) {
                ofRow.add(new ArrayList<>());
            }
            List<Plane> planes = ofRow.get(plane.row());
            planes.remove(plane);
            planes.add(plane);
            if (planes.size() > A_ROW) {
                planes.remove(0);
            }
        }
        flatten();
        state.follow(this);
    }

    private void flatten() {
        int count = ofRow.stream().mapToInt(List::size).sum();
        factors = new double[FACTORS * count];
        firstMoment = new int[count];
        ends = new int[ofRow.size()];
        hard = new boolean[ofRow.size()];
        int at = 0;
        for (int row = 0; row < ofRow.size(); row++) {
            for (Plane plane : ofRow.get(row)) {
                factors[FACTORS * at] = plane.constant();
                factors[FACTORS * at + 1] = plane.x();
                factors[FACTORS * at + 2] = plane.y();
                factors[FACTORS * at + 3] = plane.z();
                factors[FACTORS * at + 4] = plane.xy();
                firstMoment[at] = plane.onStation() ? 0 : 4;
                at++;
            }
            ends[row] = at;
            hard[row] = register.hard(row);
        }
    }

    /**
     * Sums what the rows lack (thousandths): hard first, then medium.
     *
     * @param moments Mx, My, Mz, Mxy on station, then the same on the road
     */
    void assess(double[] moments, long[] sums) {
        sums[0] = 0;
        sums[1] = 0;
        int at = 0;
        for (int row = 0; row < ends.length; row++) {
            double least = 0;
            for (; at < ends[row]; at++) {
                int f = FACTORS * at;
                int m = firstMoment[at];
                double margin = factors[f]
                        + factors[f + 1] * moments[m]
                        + factors[f + 2] * moments[m + 1]
                        + factors[f + 3] * moments[m + 2]
                        + factors[f + 4] * moments[m + 3];
                if (margin < least) {
                    least = margin;
                }
            }
            if (least < -ROUNDING) {
                sums[hard[row] ? 0 : 1] += Math.max(1, Math.round(-least));
            }
        }
    }
}
