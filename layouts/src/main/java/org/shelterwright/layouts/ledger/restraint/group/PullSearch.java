package org.shelterwright.layouts.ledger.restraint.group;

import java.util.Arrays;
import java.util.List;

/** Finds the pulls of a {@link FlatGroup}. Places in arrays, since it runs some ten thousand times a ledger. */
final class PullSearch {
    /** Share of the load by which a pressure may come out below zero, as it does by rounding on an edge. */
    private static final double SLACK = 1e-11;

    private final int bolts;
    private final int corners;
    private final double[] s;
    private final double[] t;
    private final double[] k;
    private final double[] cs;
    private final double[] ct;
    private final Pivots pivots;

    PullSearch(List<Bolt> bolts, List<Spot> hull) {
        this.bolts = bolts.size();
        corners = hull.size();
        s = bolts.stream().mapToDouble(Bolt::s).toArray();
        t = bolts.stream().mapToDouble(Bolt::t).toArray();
        k = bolts.stream().mapToDouble(Bolt::pullStiffness).toArray();
        cs = hull.stream().mapToDouble(Spot::s).toArray();
        ct = hull.stream().mapToDouble(Spot::t).toArray();
        pivots = new Pivots(s, t, k, cs, ct);
    }

    /**
     * Finds the pulls and pressures for a pull p in all and its moments.
     *
     * @return false if nothing balances the load
     */
    boolean find(double p, double ms, double mt, double size, double[] pull, double[] press) {
        if (presses(p, ms, mt, press)) {
            return true;
        }
        for (int edge = 0; edge < corners; edge++) {
            if (aboutEdge(edge, p, ms, mt, size, pull, press)) {
                return true;
            }
        }
        for (int corner = 0; corner < corners; corner++) {
            if (pivots.aboutCorner(corner, p, ms, mt, size, SLACK, pull, press)) {
                return true;
            }
        }
        return pivots.free(p, ms, mt, size, SLACK, pull, press);
    }

    /** The load presses inside the hull: shared among three corners of the fan of triangles that holds its place. */
    private boolean presses(double p, double ms, double mt, double[] press) {
        if (p >= 0 || corners == 0) {
            return false;
        }
        double atS = ms / p;
        double atT = mt / p;
        for (int i = 1; i + 1 < corners; i++) {
            double area = cross(0, i, cs[i + 1], ct[i + 1]);
            double second = cross(0, i, atS, atT) / area;
            double first = cross(i + 1, 0, atS, atT) / area;
            double apex = 1 - first - second;
            if (first >= -SLACK && second >= -SLACK && apex >= -SLACK) {
                Arrays.fill(press, 0);
                press[0] = -p * Math.max(0, apex);
                press[i] = -p * Math.max(0, first);
                press[i + 1] = -p * Math.max(0, second);
                return true;
            }
        }
        return false;
    }

    private double cross(int from, int to, double x, double y) {
        return (cs[to] - cs[from]) * (y - ct[from]) - (ct[to] - ct[from]) * (x - cs[from]);
    }

    private boolean aboutEdge(int edge, double p, double ms, double mt, double size, double[] pull, double[] press) {
        int next = edge + 1 == corners ? 0 : edge + 1;
        double ds = cs[next] - cs[edge];
        double dt = ct[next] - ct[edge];
        double length = Math.sqrt(ds * ds + dt * dt);
        ds /= length;
        dt /= length;
        double moment = mt * ds - ms * dt - p * (ct[edge] * ds - cs[edge] * dt);
        if (moment <= 0) {
            return false;
        }
        double squares = 0;
        for (int i = 0; i < bolts; i++) {
            double lever = (t[i] - ct[edge]) * ds - (s[i] - cs[edge]) * dt;
            if (lever > 0) {
                squares += k[i] * lever * lever;
            }
        }
        if (squares == 0) {
            return false;
        }
        double sum = 0;
        double along = 0;
        for (int i = 0; i < bolts; i++) {
            double lever = (t[i] - ct[edge]) * ds - (s[i] - cs[edge]) * dt;
            pull[i] = lever > 0 ? k[i] * moment * lever / squares : 0;
            sum += pull[i];
            along += pull[i] * ((s[i] - cs[edge]) * ds + (t[i] - ct[edge]) * dt);
        }
        double load = ms * ds + mt * dt - p * (cs[edge] * ds + ct[edge] * dt);
        double far = (along - load) / length;
        double near = sum - p - far;
        if (far < -SLACK * size || near < -SLACK * size) {
            return false;
        }
        Arrays.fill(press, 0);
        press[edge] = near;
        press[next] = far;
        return true;
    }
}
