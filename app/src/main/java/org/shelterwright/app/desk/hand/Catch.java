package org.shelterwright.app.desk.hand;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * What caught a drag.
 *
 * @param place where to mark it, in the frame of the body
 * @param words what caught, such as "rail 2, hole 24"
 * @param faces flat cuboids that now touch or lie in one plane; empty for holes and the grid
 */
public record Catch(Kind kind, Point place, String words, List<Box> faces) {
    public Catch {
        faces = List.copyOf(faces);
    }

    /** What can catch, the strongest first. */
    public enum Kind {
        /** Every fixing lands on a hard point. */
        HOLE,
        /** A wall, the floor, the roof, a wheel arch, or a stop of the mounting. */
        WALL,
        /** A face of another unit: touching, or in one plane with it. */
        FACE,
        GRID
    }
}
