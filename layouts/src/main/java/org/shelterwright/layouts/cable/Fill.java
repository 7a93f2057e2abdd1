package org.shelterwright.layouts.cable;

/**
 * How full trays and ducts may be: a share of the inside cross-section that the outer cross-sections of the cables take. Of a
 * closed duct it depends on their number.
 *
 * <p>Source: NEC (NFPA 70), chapter 9, table 1, for ducts; common practice for trays.
 *
 * @param tray greatest share of an open tray
 * @param one of a duct with one cable
 * @param two of a duct with two cables
 * @param more of a duct with more cables
 */
public record Fill(double tray, double one, double two, double more) {
    public static final Fill NEC = new Fill(0.4, 0.53, 0.31, 0.4);

    /** Greatest share with so many cables. */
    public double most(boolean closed, int cables) {
        if (!closed) {
            return tray;
        }
        return cables <= 1 ? one : cables == 2 ? two : more;
    }

    /** A share that holds whatever the number of cables. */
    public double always(boolean closed) {
        return closed ? Math.min(one, Math.min(two, more)) : tray;
    }
}
