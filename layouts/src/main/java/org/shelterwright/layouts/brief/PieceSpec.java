package org.shelterwright.layouts.brief;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.piece.Urgency;

/**
 * One piece that must have a place inside a unit.
 *
 * @param id unique in the inventory, such as "radio-1"
 * @param name as people call it
 * @param kind id of its catalog entry
 * @param within id of the unit that it must go into; {@code null}: any
 * @param task id of the task that it is used in; {@code null} if in none
 * @param order when it is used in its task, from 1; {@code null} if that does not matter
 * @param urgency how fast it must be at hand; {@code null}: as its kind says
 * @param takenOut true if it is taken from its place to its task on station
 * @param strip name of the strip of its rack that it is plugged into; {@code null}: the only one that fits
 * @param owner who answers for it; {@code null} if not stated
 */
public record PieceSpec(
        String id,
        String name,
        String kind,
        @Nullable String within,
        @Nullable String task,
        @Nullable Integer order,
        @Nullable Urgency urgency,
        boolean takenOut,
        @Nullable String strip,
        @Nullable String owner) {
    public PieceSpec {
        if (order != null && order < 1) {
            throw new IllegalArgumentException("The order of use of piece \"" + id + "\" counts from 1.");
        }
        if (order != null && task == null) {
            throw new IllegalArgumentException(
                    "The piece \"" + id + "\" has an order of use and no task. Give its task.");
        }
    }

    /** A piece of which nothing is said but what it is. */
    public static PieceSpec of(String id, String name, String kind) {
        return new PieceSpec(id, name, kind, null, null, null, null, false, null, null);
    }
}
