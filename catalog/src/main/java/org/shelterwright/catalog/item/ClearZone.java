package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Box;

/**
 * Space that must stay free of solids other than the item's own. It may reach beyond the size of the item.
 *
 * @param name what it is, such as "front service" or "work place"
 * @param box in the frame of the item
 * @param presence when it must be free
 */
public record ClearZone(String name, Purpose purpose, Box box, Presence presence) {
    public ClearZone {
        if (box.flat()) {
            throw new IllegalArgumentException("The clear zone \"" + name + "\" has no thickness.");
        }
    }
}
