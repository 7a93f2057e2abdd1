package org.shelterwright.layouts.state;

import org.jspecify.annotations.Nullable;

/**
 * A figure that is missing for sums of mass.
 *
 * @param unit id of the unit that lacks it; {@code null} if it is the body, the carrier or the trailer
 * @param sentence what is missing and where to give it
 */
public record Gap(Holder holder, Kind kind, @Nullable String unit, String sentence) {
    /** Which quantities a gap blocks. */
    public enum Kind {
        /** The mass, its growth or its uncertainty: blocks every sum. */
        MASS,
        /** The centre of mass: blocks what depends on the place. */
        CENTRE,
        /** The height of a centre of mass: blocks what depends on the height. */
        HEIGHT
    }

    boolean blocks(Influence influence) {
        return switch (kind) {
            case MASS -> !influence.none();
            case CENTRE -> influence.usesPlace();
            case HEIGHT -> influence.perZ() != 0;
        };
    }
}
