package org.shelterwright.layouts.ledger.restraint.group;

import java.util.Arrays;

/**
 * Springs between a rigid thing and the ground, some of which act one way only. With the small motion x of the thing and the
 * row r of a spring, its stretch is r·x and its force k·r·x, or none if it acts one way and r·x is below zero.
 *
 * <p>The motion under a load q makes ½ Σ k max(r·x, 0)² − q·x least. That is convex and piecewise quadratic, so Newton's
 * steps with a line search end after finitely many of them at the least value; which springs act is found, not assumed. (Qi,
 * L. and Sun, J.: A nonsmooth version of Newton's method, Mathematical Programming 58 (1993) 353-367; from memory.) Cost: a few
 * times (springs · d² + d³) for d unknowns.
 */
final class Springs {
    private static final int MOST_STEPS = 100;
    /** Keeps the equations solvable where the acting springs leave a motion free; the line search then finds the spring that ends it. */
    private static final double DAMPING = 1e-13;
    /** Share of the load, or of the largest force if that is larger, to which the forces must balance. */
    static final double BALANCE = 1e-10;

    private final double[][] rows;
    private final double[] stiffness;
    private final boolean[] oneWay;
    private final int unknowns;
    private final double[] x;
    private final double[] gradient;
    private final double[] step;
    private final double[][] matrix;
    private final double[] stretch;
    private final double[] rate;
    private double largest;

    Springs(double[][] rows, double[] stiffness, boolean[] oneWay, int unknowns) {
        this.rows = rows;
        this.stiffness = stiffness;
        this.oneWay = oneWay;
        this.unknowns = unknowns;
        x = new double[unknowns];
        gradient = new double[unknowns];
        step = new double[unknowns];
        matrix = new double[unknowns][unknowns];
        stretch = new double[rows.length];
        rate = new double[rows.length];
    }

    /**
     * Finds the motion under a load.
     *
     * @param loadSize size of the load, against which balance is judged
     * @return whether the springs balance the load
     */
    boolean solve(double[] load, double loadSize) {
        Arrays.fill(x, 0);
        boolean all = true;
        for (int round = 0; round < MOST_STEPS; round++) {
            double worst = assemble(load, all);
            if (!all && worst <= BALANCE * Math.max(loadSize, largest)) {
                return true;
            }
            if (!SmallSystem.solve(matrix, gradient, step)) {
                return false;
            }
            move(all ? 1 : lowest(load));
            all = false;
        }
        return assemble(load, false) <= BALANCE * Math.max(loadSize, largest);
    }

    double force(int spring) {
        double reach = dot(rows[spring], x);
        return oneWay[spring] && reach <= 0 ? 0 : stiffness[spring] * reach;
    }

    double[] motion() {
        return x;
    }

    /** Fills matrix and downhill gradient, at first with every spring acting; gives the largest part out of balance. */
    private double assemble(double[] load, boolean all) {
        for (int i = 0; i < unknowns; i++) {
            Arrays.fill(matrix[i], 0);
            gradient[i] = load[i];
        }
        double trace = Double.MIN_NORMAL;
        largest = 0;
        for (int spring = 0; spring < rows.length; spring++) {
            double[] row = rows[spring];
            double reach = dot(row, x);
            if (all || !oneWay[spring] || reach > 0) {
                largest = Math.max(largest, Math.abs(stiffness[spring] * reach));
                for (int i = 0; i < unknowns; i++) {
                    double scaled = stiffness[spring] * row[i];
                    gradient[i] -= scaled * reach;
                    trace += scaled * row[i];
                    for (int j = 0; j < unknowns; j++) {
                        matrix[i][j] += scaled * row[j];
                    }
                }
            }
        }
        double worst = 0;
        for (int i = 0; i < unknowns; i++) {
            matrix[i][i] += DAMPING * trace;
            worst = Math.max(worst, Math.abs(gradient[i]));
        }
        return worst;
    }

    /**
     * How far along the step the energy is least. Its slope rises in straight pieces from one place where a spring begins or ends
     * to act to the next, so the pieces are walked through until it is zero.
     */
    private double lowest(double[] load) {
        for (int spring = 0; spring < rows.length; spring++) {
            stretch[spring] = dot(rows[spring], x);
            rate[spring] = dot(rows[spring], step);
        }
        double at = 0;
        double pull = dot(load, step);
        for (int piece = 0; piece <= rows.length; piece++) {
            double slope = -pull;
            double rise = 0;
            double end = Double.POSITIVE_INFINITY;
            for (int spring = 0; spring < rows.length; spring++) {
                double zero = oneWay[spring] && rate[spring] != 0 ? -stretch[spring] / rate[spring] : -1;
                boolean acts = !oneWay[spring]
                        || (rate[spring] > 0 ? zero <= at : rate[spring] < 0 ? zero > at : stretch[spring] > 0);
                if (acts) {
                    slope += stiffness[spring] * rate[spring] * (stretch[spring] + at * rate[spring]);
                    rise += stiffness[spring] * rate[spring] * rate[spring];
                }
                if (zero > at && zero < end) {
                    end = zero;
                }
            }
            double root = slope >= 0 ? at : rise > 0 ? at - slope / rise : Double.POSITIVE_INFINITY;
            if (root <= end) {
                return root < Double.POSITIVE_INFINITY ? root : 0;
            }
            at = end;
        }
        return at;
    }

    private void move(double share) {
        for (int i = 0; i < unknowns; i++) {
            x[i] += share * step[i];
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
