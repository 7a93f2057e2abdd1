package org.shelterwright.app.desk.search;

import org.shelterwright.app.look.Numerals;

/** What lacks of limits or wishes, in words. */
final class Lacking {
    private Lacking() {}

    /** @param micrometres the sum of what lacks */
    static String mm(long micrometres) {
        return micrometres == 0 ? "nothing" : Numerals.of(micrometres / 1000.0, 0) + Numerals.GAP + "mm";
    }
}
