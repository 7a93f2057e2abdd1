package org.shelterwright.catalog.transit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Rect;

/**
 * A strip of a deck on which chocks hold: nailed, or caught in a perforated rail.
 *
 * @param area seen from above, in the frame of the car
 * @param chockN what one chock holds (N); {@code null} if not known
 */
public record ChockRail(String name, Rect area, @Nullable Double chockN) {}
