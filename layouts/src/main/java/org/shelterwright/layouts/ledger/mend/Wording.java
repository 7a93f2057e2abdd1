package org.shelterwright.layouts.ledger.mend;

import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;

/** The words of findings, so that one thing is called the same everywhere. */
public final class Wording {
    private Wording() {}

    /** A length with its unit, exact, such as "38 mm". */
    public static String mm(int micrometres) {
        return Lengths.format(micrometres) + " mm";
    }

    public static String situation(Situation situation) {
        return situation == Situation.ON_STATION ? "on station" : "on the road";
    }

    /** An inside surface of a body, such as "the left wall". */
    public static String surface(Face face) {
        return switch (face) {
            case BOTTOM -> "the floor";
            case TOP -> "the roof";
            case FRONT -> "the front wall";
            case REAR -> "the rear wall";
            case LEFT -> "the left wall";
            case RIGHT -> "the right wall";
        };
    }

    public static String surface(Surface surface) {
        return switch (surface) {
            case FLOOR -> "the floor";
            case WALL -> "a wall";
            case ROOF -> "the roof";
            case ON_UNIT -> "another unit";
            case UNDER_UNIT -> "the underside of another unit";
        };
    }

    /** The way that a face looks, such as "forward". */
    public static String direction(Face face) {
        return switch (face) {
            case FRONT -> "forward";
            case REAR -> "to the rear";
            case LEFT -> "to the left";
            case RIGHT -> "to the right";
            case TOP -> "up";
            case BOTTOM -> "down";
        };
    }

    /** A count with its noun, such as "1 fixing" or "3 fixings". */
    public static String count(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    /** Names in a row, such as "F1, F2 and F3". */
    public static String list(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** Names in a row, of many only the first, such as "F1, F2 and 7 more". */
    public static String few(List<String> names, int most) {
        return names.size() <= most
                ? list(names)
                : String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more";
    }
}
