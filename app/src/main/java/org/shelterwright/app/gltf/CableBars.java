package org.shelterwright.app.gltf;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/** Cables as bars of square section along their paths. */
final class CableBars {
    private CableBars() {}

    /** @param diameter of the cable (µm) */
    static List<Box> of(List<Point> path, int diameter) {
        List<Box> bars = new ArrayList<>();
        int half = Math.max(1, diameter / 2);
        for (int i = 1; i < path.size(); i++) {
            Point a = path.get(i - 1);
            Point b = path.get(i);
            bars.add(Box.between(a, a).hull(Box.between(b, b)).grown(half, half, half));
        }
        return bars;
    }

    static Colour colour(CableClass of) {
        return switch (of) {
            case POWER -> Role.POWER.colour();
            case SIGNAL -> Role.SIGNAL.colour();
            case RADIO_FREQUENCY -> Role.RADIO.colour();
            case FIBRE -> Role.FIBRE.colour();
            case EARTH -> Role.EARTH.colour();
        };
    }
}
