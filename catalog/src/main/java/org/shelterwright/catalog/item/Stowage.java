package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * Space inside an item for loose pieces.
 *
 * @param inside in the frame of the item
 * @param ratingKg mass that it may hold (kg)
 * @param kind {@code null} if not stated; it then counts as a cupboard
 * @param opening where pieces go in and out, in the frame of the item; {@code null}: by its kind
 * @param lock what keeps it closed on the road, such as "drawer lock"; {@code null} if not stated
 * @param leastC lowest temperature in it (°C); {@code null}: that of the room
 * @param mostC highest temperature in it (°C); {@code null}: that of the room
 */
public record Stowage(
        String name,
        Box inside,
        double ratingKg,
        @Nullable StowageKind kind,
        @Nullable Face opening,
        @Nullable String lock,
        @Nullable Double leastC,
        @Nullable Double mostC) {
    public Stowage {
        Figures.notNegative("stowage rating (kg)", ratingKg);
        if (opening == Face.BOTTOM) {
            throw new IllegalArgumentException("The stowage place \"" + name + "\" must not open downwards.");
        }
        if (leastC != null && mostC != null && leastC > mostC) {
            throw new IllegalArgumentException("The lowest temperature in \"" + name + "\" must not be above the highest.");
        }
    }

    /** A place of which only its room and its rating are stated. */
    public Stowage(String name, Box inside, double ratingKg) {
        this(name, inside, ratingKg, null, null, null, null, null);
    }

    /** Where pieces go in and out, in the frame of the item. */
    public Face way() {
        StowageKind of = kind == null ? StowageKind.CUPBOARD : kind;
        return opening == null ? of.opening() : opening;
    }
}
