package org.shelterwright.layouts.ledger.lifting;

/**
 * Four points at the corners of a level rectangle that bear a mass together. Points are counted (low x, low y), (low x, high y),
 * (high x, low y), (high x, high y).
 */
record FourPoints(double x0, double x1, double y0, double y1) {
    FourPoints {
        if (!(x1 > x0) || !(y1 > y0)) {
            throw new IllegalArgumentException("Four points must span an area.");
        }
    }

    double x(int point) {
        return point < 2 ? x0 : x1;
    }

    double y(int point) {
        return point % 2 == 0 ? y0 : y1;
    }

    /**
     * Share of each point, by the distances of the opposite ones from the centre of mass.
     *
     * <p>Source: MIL-STD-209K, appendix C, sample problem: T = T_total · S_opposite/(S_a + S_b) · L_opposite/(L_a + L_b).
     */
    double[] shares(double x, double y) {
        double a = (x - x0) / (x1 - x0);
        double b = (y - y0) / (y1 - y0);
        return new double[] {(1 - a) * (1 - b), (1 - a) * b, a * (1 - b), a * b};
    }

    /**
     * Share of each point if it and the one across alone bear all: the legs of a stiff body are never all taut. The mass is taken
     * where it is nearest to the line between the two.
     *
     * <p>Source: common practice; 29 CFR 1910.184 rates four legs no higher than three.
     */
    double[] sharesOfTwo(double x, double y) {
        double[] shares = new double[4];
        double dx = x1 - x0;
        double dy = y1 - y0;
        double along = ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy);
        shares[3] = clamp(along);
        shares[0] = 1 - shares[3];
        double across = ((x - x0) * dx - (y - y1) * dy) / (dx * dx + dy * dy);
        shares[2] = clamp(across);
        shares[1] = 1 - shares[2];
        return shares;
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }

    double middleX() {
        return (x0 + x1) / 2;
    }

    double middleY() {
        return (y0 + y1) / 2;
    }

    boolean holds(double x, double y) {
        return x >= x0 && x <= x1 && y >= y0 && y <= y1;
    }

    /** The greatest distance of a point from a place in plan (m). */
    double farthest(double x, double y) {
        return Math.hypot(Math.max(x - x0, x1 - x), Math.max(y - y0, y1 - y));
    }

    double halfDiagonal() {
        return Math.hypot(x1 - x0, y1 - y0) / 2;
    }
}
