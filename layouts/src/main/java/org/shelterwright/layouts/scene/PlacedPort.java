package org.shelterwright.layouts.scene;

import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.space.Box;

/**
 * A port of a placed unit that a wire of the brief ends at.
 *
 * @param ownPlugRoom the room that a plug fills, in the frame of the item
 * @param plugRoom the room that a plug fills, in the frame of the body
 */
public record PlacedPort(Port port, Box ownPlugRoom, Box plugRoom) {}
