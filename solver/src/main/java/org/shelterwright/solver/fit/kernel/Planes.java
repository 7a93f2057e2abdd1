package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.model.Plane;

/** The tangents that one lane knows: a few of the newest for each row. Not for several threads. */
public final class Planes {
    private static final int A_ROW = 4;

    private final MomentLimits limits;
    private final MomentLimits.Register register = new MomentLimits.Register();
    private final List<List<Plane>> ofRow = new ArrayList<>();

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
        state.follow(this);
    }

    /** Sums what the rows lack at these moments on station and on the road (thousandths): hard first, then medium. */
    void assess(long sx, long sy, long sz, long sxy, long rx, long ry, long rz, long rxy, long[] sums) {
        sums[0] = 0;
        sums[1] = 0;
        for (int row = 0; row < ofRow.size(); row++) {
            List<Plane> planes = ofRow.get(row);
            double least = 0;
            for (int i = 0; i < planes.size(); i++) {
                Plane plane = planes.get(i);
                double margin = plane.onStation() ? plane.at(sx, sy, sz, sxy) : plane.at(rx, ry, rz, rxy);
                least = Math.min(least, margin);
            }
            if (least < -1e-6) {
                sums[register.hard(row) ? 0 : 1] += Math.max(1, Math.round(-least));
            }
        }
    }
}
