package org.shelterwright.solver.load.practice;

import java.util.List;
import org.shelterwright.solver.load.model.BalanceLine;
import org.shelterwright.solver.load.model.LoadProblem;

/**
 * By how much a load breaks the linear limits on its moments, in the worst state of unloading, and how it stands best:
 * mirrored along, across or both, and shifted as a whole where it leaves room.
 */
final class Balance {
    private final List<BalanceLine> lines;
    private final int roomX;
    private final int roomY;
    private final boolean mirrorsX;
    private final boolean mirrorsY;
    private final boolean shifts;

    /**
     * How a whole load is to be moved.
     *
     * @param broken what is broken then: 0 if nothing is
     */
    record Stand(boolean mirrorX, boolean mirrorY, int shiftX, int shiftY, double broken) {}

    Balance(LoadProblem problem) {
        lines = problem.practice().balance();
        roomX = problem.room().x();
        roomY = problem.room().y();
        boolean open = problem.practice().keptFree().isEmpty()
                && problem.practice().pinned().isEmpty();
        mirrorsX = open && !problem.practice().byStops();
        mirrorsY = open;
        shifts = open;
    }

    boolean asked() {
        return !lines.isEmpty();
    }

    /** The best stand of a load. */
    Stand best(Moments moments) {
        Stand best = new Stand(false, false, 0, 0, Double.POSITIVE_INFINITY);
        for (int mirror = 0; mirror < 4; mirror++) {
            boolean mx = (mirror & 1) != 0;
            boolean my = (mirror & 2) != 0;
            if ((!mx || mirrorsX) && (!my || mirrorsY)) {
                Stand stand = shifted(moments, mx, my);
                if (stand.broken() < best.broken()) {
                    best = stand;
                }
            }
        }
        return best;
    }

    /** Along and across are shifted in turn; what is broken is convex in each, so thirds find its least. */
    private Stand shifted(Moments m, boolean mx, boolean my) {
        int lowX = mx ? m.highX() - roomX : -m.lowX();
        int highX = mx ? m.lowX() : roomX - m.highX();
        int lowY = my ? m.highY() - roomY : -m.lowY();
        int highY = my ? m.lowY() : roomY - m.highY();
        double now = broken(m, mx, my, 0, 0);
        if (now == 0 || !shifts) {
            return new Stand(mx, my, 0, 0, now);
        }
        int sx = least(lowX, highX, s -> broken(m, mx, my, s, 0));
        int sy = least(lowY, highY, s -> broken(m, mx, my, sx, s));
        return new Stand(mx, my, sx, sy, broken(m, mx, my, sx, sy));
    }

    private interface Cost {
        double at(int shift);
    }

    private static int least(int low, int high, Cost cost) {
        int a = low;
        int b = high;
        while (b - a > 2) {
            int third = (b - a) / 3;
            if (cost.at(a + third) <= cost.at(b - third)) {
                b -= third;
            } else {
                a += third;
            }
        }
        int best = Math.max(low, Math.min(high, 0));
        for (int s = a; s <= b; s++) {
            if (cost.at(s) < cost.at(best)) {
                best = s;
            }
        }
        return best;
    }

    private double broken(Moments m, boolean mx, boolean my, int shiftX, int shiftY) {
        double worst = 0;
        for (int state = 0; state < m.states(); state++) {
            double mass = m.mass(state);
            if (mass > 0) {
                double along = (mx ? mass * roomX - m.along(state) : m.along(state)) + mass * shiftX;
                double across = (my ? mass * roomY - m.across(state) : m.across(state)) + mass * shiftY;
                double sum = 0;
                for (BalanceLine line : lines) {
                    sum += Math.max(0, line.value(mass, along, across)) / line.scaleKg();
                }
                worst = Math.max(worst, sum);
            }
        }
        return worst;
    }
}
