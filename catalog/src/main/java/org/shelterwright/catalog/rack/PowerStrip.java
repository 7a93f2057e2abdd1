package org.shelterwright.catalog.rack;

import org.shelterwright.catalog.source.Figures;

/**
 * A strip of sockets in a rack.
 *
 * @param name such as "strip A"
 * @param supply which kind of supply, such as "230 V ac"
 * @param ratingA current that it bears (A)
 * @param sockets number of its sockets
 */
public record PowerStrip(String name, String supply, double ratingA, int sockets) {
    public PowerStrip {
        Figures.positive("rating (A) of " + name, ratingA);
        if (sockets < 1 || sockets > 100) {
            throw new IllegalArgumentException(
                    "The strip \"" + name + "\" has " + sockets + " sockets; it must have 1 to 100.");
        }
    }
}
