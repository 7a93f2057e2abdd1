package org.shelterwright.layouts.ledger.axles.road;

/**
 * The Federal bridge formula: {@code W = 500 (L N / (N − 1) + 12 N + 36)}, with W in lb to the nearest 500 lb, L the distance
 * between the outer axles of a group in feet to the nearest foot, and N its number of axles.
 *
 * <p>Ties go down, as the printed table shows (N = 3: 42 500 lb at 9 ft, 44 000 lb at 11 ft, where the formula gives 42 750 and
 * 44 250). Groups of two or three axles up to 8 ft bear 34 000 lb; above 8 and below 9 ft the formula counts with 8 ft.
 *
 * <p>Source: 23 U.S.C. 127(a)(2), 23 CFR 658.17(e); table of the pamphlet "Bridge Formula Weights", FHWA, August 2019 (tie rule
 * and 8 ft rows from memory).
 */
final class BridgeFormula {
    static final int FOOT = 304_800;
    static final int INCH = 25_400;
    static final double KG_PER_LB = 0.45359237;
    static final int SINGLE_LB = 20_000;
    static final int TANDEM_LB = 34_000;
    static final int GROSS_LB = 80_000;
    /** Two consecutive tandems whose outer axles are at least 36 ft apart (23 CFR 658.17(e)). */
    static final int TWO_TANDEMS_LB = 68_000;

    private BridgeFormula() {}

    /** By a whole number of feet: the formula alone, rounded (lb). */
    static int formulaLb(int feet, int axles) {
        // in units of 500/(N − 1) lb all is whole: W/500 = q + r/(N − 1)
        int whole = feet * axles + (12 * axles + 36) * (axles - 1);
        int quotient = whole / (axles - 1);
        int rest = whole % (axles - 1);
        return 500 * (2 * rest > axles - 1 ? quotient + 1 : quotient);
    }

    /**
     * What a group of two or more consecutive axles may bear (lb).
     *
     * @param distance between its outer axles (µm)
     */
    static int allowedLb(int distance, int axles) {
        if (distance <= 40 * INCH) {
            return SINGLE_LB;
        }
        if (distance <= 8 * FOOT && axles <= 3) {
            return TANDEM_LB;
        }
        int feet = distance > 8 * FOOT && distance < 9 * FOOT ? 8 : nearestFoot(distance);
        return formulaLb(feet, axles);
    }

    /** Half a foot goes down. */
    static int nearestFoot(int distance) {
        int feet = distance / FOOT;
        return 2 * (distance % FOOT) > FOOT ? feet + 1 : feet;
    }
}
