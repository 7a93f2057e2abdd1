package org.shelterwright.catalog.body;

import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * A panel in a wall through which cables enter.
 *
 * @param area flat cuboid in the wall, in the frame of the body
 * @param places number of glands or connectors that it takes
 */
public record EntryPanel(String name, Face wall, Box area, int places) {}
