package org.shelterwright.layouts.ledger.restraint.group;

import java.util.List;
import java.util.Optional;

/** The plain twin of the search for pulls: tries every set of pulling bolts with every set of up to two touching corners. */
final class EveryState {
    private static final double TOLERANCE = 1e-9;

    private EveryState() {}

    /** The pulls of the only state in which nothing is below zero; empty if there is none. */
    static Optional<double[]> pulls(List<Bolt> bolts, List<Spot> hull, Force force) {
        if (pressesInside(hull, force)) {
            return Optional.of(new double[bolts.size()]);
        }
        for (int first = -1; first < hull.size(); first++) {
            for (int second = -1; second < first || second == -1; second++) {
                for (int set = 1; set < 1 << bolts.size(); set++) {
                    Optional<double[]> found = state(bolts, hull, force, first, second, set);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean pressesInside(List<Spot> hull, Force force) {
        if (force.off() >= 0) {
            return false;
        }
        double s = force.pullMomentS() / force.off();
        double t = force.pullMomentT() / force.off();
        for (int i = 0; i < hull.size(); i++) {
            Spot a = hull.get(i);
            Spot b = hull.get((i + 1) % hull.size());
            if ((b.s() - a.s()) * (t - a.t()) - (b.t() - a.t()) * (s - a.s()) < 0) {
                return false;
            }
        }
        return !hull.isEmpty();
    }

    private static Optional<double[]> state(
            List<Bolt> bolts, List<Spot> hull, Force force, int first, int second, int set) {
        int touching = (first < 0 ? 0 : 1) + (second < 0 ? 0 : 1);
        int[] corners = {first, second};
        double[][] m = new double[3 + touching][3 + touching];
        double[] b = new double[3 + touching];
        b[0] = force.off();
        b[1] = force.pullMomentS();
        b[2] = force.pullMomentT();
        for (int i = 0; i < bolts.size(); i++) {
            if ((set >> i & 1) == 1) {
                double[] row = {1, bolts.get(i).s(), bolts.get(i).t()};
                for (int j = 0; j < 9; j++) {
                    m[j / 3][j % 3] += bolts.get(i).pullStiffness() * row[j / 3] * row[j % 3];
                }
            }
        }
        for (int c = 0; c < touching; c++) {
            double[] row = {1, hull.get(corners[c]).s(), hull.get(corners[c]).t()};
            for (int j = 0; j < 3; j++) {
                m[3 + c][j] = row[j];
                m[j][3 + c] = -row[j];
            }
        }
        double[] x = new double[3 + touching];
        if (!solve(m, b, x)) {
            return Optional.empty();
        }
        return fits(bolts, hull, set, touching, x);
    }

    private static Optional<double[]> fits(List<Bolt> bolts, List<Spot> hull, int set, int touching, double[] x) {
        double[] pulls = new double[bolts.size()];
        for (int i = 0; i < bolts.size(); i++) {
            double stretch =
                    x[0] + x[1] * bolts.get(i).s() + x[2] * bolts.get(i).t();
            if ((set >> i & 1) == 1) {
                if (stretch < -TOLERANCE) {
                    return Optional.empty();
                }
                pulls[i] = bolts.get(i).pullStiffness() * stretch;
            } else if (stretch > TOLERANCE) {
                return Optional.empty();
            }
        }
        for (Spot corner : hull) {
            if (x[0] + x[1] * corner.s() + x[2] * corner.t() < -TOLERANCE) {
                return Optional.empty();
            }
        }
        for (int c = 0; c < touching; c++) {
            if (x[3 + c] < -TOLERANCE) {
                return Optional.empty();
            }
        }
        return Optional.of(pulls);
    }

    private static boolean solve(double[][] m, double[] b, double[] x) {
        int n = b.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column; row < n; row++) {
                pivot = Math.abs(m[row][column]) > Math.abs(m[pivot][column]) ? row : pivot;
            }
            if (Math.abs(m[pivot][column]) < 1e-10) {
                return false;
            }
            double[] held = m[pivot];
            m[pivot] = m[column];
            m[column] = held;
            double value = b[pivot];
            b[pivot] = b[column];
            b[column] = value;
            for (int row = 0; row < n; row++) {
                if (row != column) {
                    double factor = m[row][column] / held[column];
                    for (int k = column; k < n; k++) {
                        m[row][k] -= factor * held[k];
                    }
                    b[row] -= factor * value;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            x[i] = b[i] / m[i][i];
        }
        return true;
    }
}
