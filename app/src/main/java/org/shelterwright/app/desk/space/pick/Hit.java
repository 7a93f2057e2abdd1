package org.shelterwright.app.desk.space.pick;

import javafx.geometry.Point3D;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * Where a line of sight first meets something.
 *
 * @param unit id of the unit; empty if it is the body
 * @param place in the frame of the body (mm)
 * @param face of the cuboid, with its outward side
 * @param solid the cuboid that was met; that of the inside for floor and walls
 */
public record Hit(String unit, Point3D place, Face face, Box solid) {
    public boolean onUnit() {
        return !unit.isEmpty();
    }
}
