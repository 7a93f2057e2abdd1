package org.shelterwright.layouts.transport.scene;

import org.shelterwright.catalog.space.Lengths;

/**
 * An axle of a piece that stands on wheels, or the support of an uncoupled trailer.
 *
 * @param x in the frame of the piece (µm)
 * @param y middle between its wheels, in the frame of the piece (µm)
 * @param track between left and right (µm); 0 of a support
 * @param leftKg load on the left (kg)
 * @param rightKg load on the right (kg)
 */
public record Wheel(String name, int x, int y, int track, double leftKg, double rightKg) {
    public double loadKg() {
        return leftKg + rightKg;
    }

    public boolean support() {
        return track == 0;
    }

    double xM() {
        return Lengths.metres(x);
    }
}
