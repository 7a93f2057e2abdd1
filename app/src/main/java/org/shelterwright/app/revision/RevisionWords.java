package org.shelterwright.app.revision;

import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.revision.UnitShift;

/** Differences of revisions in words and figures. */
public final class RevisionWords {
    private RevisionWords() {}

    /** By how much a unit was moved along x, y and z (mm), or that it is new or gone. */
    public static String moved(UnitShift shift) {
        Point from = shift.first();
        Point to = shift.second();
        if (from == null || to == null) {
            return from == null ? "new" : "gone";
        }
        Point by = to.minus(from);
        return by.equals(Point.ORIGIN) ? "stays" : by(by.x()) + ", " + by(by.y()) + ", " + by(by.z());
    }

    private static String by(int micrometres) {
        return (micrometres > 0 ? "+" : "") + Numerals.mm(micrometres);
    }

    /** By how much it is heavier (kg); a question mark if a mass is not known. */
    public static String mass(UnitShift shift) {
        Double kg = shift.massKg();
        return kg == null ? "?" : kg == 0 ? "" : (kg > 0 ? "+" : "") + Numerals.short3(kg);
    }

    /** A length of cable (mm); a dash if there is none. */
    public static String length(@Nullable Long micrometres) {
        return micrometres == null ? "-" : Numerals.mm(Math.toIntExact(micrometres));
    }

    public static String number(@Nullable Integer number) {
        return number == null ? "-" : Integer.toString(number);
    }
}
