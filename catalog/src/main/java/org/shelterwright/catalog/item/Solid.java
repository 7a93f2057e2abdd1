package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Box;

/**
 * A part of the space that a unit fills.
 *
 * @param name what it is, such as "top" or "left leg"
 * @param box in the frame of the item, within its size
 * @param presence when it is there (a folding flap may be there on station only)
 */
public record Solid(String name, Box box, Presence presence) {
    public Solid {
        if (box.flat()) {
            throw new IllegalArgumentException("The solid \"" + name + "\" has no thickness.");
        }
    }
}
