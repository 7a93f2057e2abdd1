package org.shelterwright.layouts.ledger.restraint.group;

/** Linear equations with a few unknowns: elimination with the largest pivot of a column. */
final class SmallSystem {
    private SmallSystem() {}

    /**
     * Solves m·x = b. Changes the matrix.
     *
     * @return false if the matrix is singular
     */
    static boolean solve(double[][] m, double[] b, double[] x) {
        int n = b.length;
        System.arraycopy(b, 0, x, 0, n);
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                pivot = Math.abs(m[row][column]) > Math.abs(m[pivot][column]) ? row : pivot;
            }
            if (m[pivot][column] == 0) {
                return false;
            }
            double[] held = m[pivot];
            m[pivot] = m[column];
            m[column] = held;
            double value = x[pivot];
            x[pivot] = x[column];
            x[column] = value;
            for (int row = column + 1; row < n; row++) {
                double factor = m[row][column] / held[column];
                if (factor != 0) {
                    for (int k = column; k < n; k++) {
                        m[row][k] -= factor * held[k];
                    }
                    x[row] -= factor * value;
                }
            }
        }
        for (int row = n - 1; row >= 0; row--) {
            double sum = x[row];
            for (int k = row + 1; k < n; k++) {
                sum -= m[row][k] * x[k];
            }
            x[row] = sum / m[row][row];
        }
        return true;
    }
}
