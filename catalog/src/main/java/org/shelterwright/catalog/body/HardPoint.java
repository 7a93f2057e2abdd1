package org.shelterwright.catalog.body;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/** What may take a fixing: a grid of holes (a rail is a grid of one row) or a zone that may be drilled anywhere. */
public sealed interface HardPoint permits HoleGrid, DrillZone {
    String name();

    /** The inside surface of the body that it lies in: BOTTOM is the floor, TOP the roof, the others are walls. */
    Face surface();

    /** Threads that it takes, such as "M10"; empty: any. */
    List<String> threads();

    Strength strength();

    /** Whether a fixing whose axis meets the surface at this place of the body lands on it, exactly. */
    boolean takes(Point at);

    /** The least cuboid that holds every place of it (µm, flat on the axis of its surface). */
    Box outline();

    /** Whether it takes a fixing of this thread at this place, coming out of the given face of a unit. */
    default boolean takes(Point at, Face fixingFace, String thread) {
        return fixingFace == surface() && (threads().isEmpty() || threads().contains(thread)) && takes(at);
    }
}
