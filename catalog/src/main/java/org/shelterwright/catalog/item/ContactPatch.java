package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Rect;

/**
 * A foot, skid or wheel print through which an item stands on what carries it.
 *
 * @param area in the frame of the item, at its bottom
 */
public record ContactPatch(String name, Rect area) {
    public ContactPatch {
        if (area.areaM2() <= 0) {
            throw new IllegalArgumentException("The contact patch \"" + name + "\" has no area.");
        }
    }
}
