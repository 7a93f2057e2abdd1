package org.shelterwright.layouts.statement;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * One line of a mass statement. What is not known is {@code null}.
 *
 * @param group group of the brief, or "body", "carrier", "trailer"
 * @param item name of the catalog entry, or of the tank
 * @param label name of the unit
 * @param unitId id of the unit; {@code null} if it is none
 * @param quantity number of pieces
 * @param unitMassKg mass of one as stated (kg)
 * @param source source letter: E estimated, C calculated, S supplier, W weighed; L for contents that load states set
 * @param growthShare growth as a share of the mass
 * @param massKg mass of all with growth (kg)
 * @param uncertaintyKg half width of its range (kg)
 * @param arm centre from the datum
 * @param when in which load states it counts
 */
public record MassLine(
        String group,
        String item,
        String label,
        @Nullable String unitId,
        int quantity,
        @Nullable Double unitMassKg,
        char source,
        @Nullable Double growthShare,
        @Nullable Double massKg,
        @Nullable Double uncertaintyKg,
        @Nullable Point arm,
        When when) {
    /** In which load states a line counts. */
    public enum When {
        ALWAYS("always"),
        ON_THE_ROAD("on the road"),
        ON_STATION("on station"),
        TANKS_LOW("tanks low"),
        TANKS_FULL("tanks full"),
        CREW_ABOARD("crew aboard"),
        AT_WORK("people at work"),
        RIDING("people riding");

        private final String words;

        When(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Moment along x from the datum (kg·m); {@code null} if the mass or arm is not known. */
    public @Nullable Double momentXKgM() {
        return moment(arm == null ? null : arm.x());
    }

    /** Moment along y from the datum (kg·m); {@code null} if the mass or arm is not known. */
    public @Nullable Double momentYKgM() {
        return moment(arm == null ? null : arm.y());
    }

    /** Moment along z from the datum (kg·m); {@code null} if the mass or arm is not known. */
    public @Nullable Double momentZKgM() {
        return moment(arm == null ? null : arm.z());
    }

    private @Nullable Double moment(@Nullable Integer micrometres) {
        return massKg == null || micrometres == null ? null : Double.valueOf(massKg * micrometres * 1e-6);
    }
}
