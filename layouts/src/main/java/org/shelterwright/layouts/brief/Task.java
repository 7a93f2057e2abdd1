package org.shelterwright.layouts.brief;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Face;

/**
 * Something that people do with pieces.
 *
 * @param id unique in the inventory, such as "gauging"
 * @param name as people call it
 * @param unit id of the unit that it is done at; {@code null} if it is done outside
 * @param opening name of the opening of the body that one goes out by, if it is done outside; {@code null} if not stated
 * @param side side of the body on which its pieces should ride, left or right; {@code null}: any
 */
public record Task(
        String id,
        String name,
        @Nullable String unit,
        @Nullable String opening,
        @Nullable Face side) {
    public Task {
        if (unit != null && opening != null) {
            throw new IllegalArgumentException("The task \"" + id
                    + "\" must be done at a unit or outside, not both. Give \"unit\" or \"opening\".");
        }
        if (side != null && side != Face.LEFT && side != Face.RIGHT) {
            throw new IllegalArgumentException("The side of task \"" + id + "\" must be left or right.");
        }
    }

    /** The same, done at no place that is stated. */
    public Task atNoPlace() {
        return new Task(id, name, null, null, side);
    }
}
