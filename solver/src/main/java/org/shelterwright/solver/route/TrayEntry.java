package org.shelterwright.solver.route;

import org.shelterwright.solver.route.drop.Drop;

/**
 * A run outside trays that comes into one.
 *
 * @param tray its number in the table
 * @param station where along it (µm)
 * @param drop the run
 * @param barred whether it may not be used
 */
record TrayEntry(int tray, int station, Drop drop, boolean barred) {
    /** Laying cost of the run. */
    long cost() {
        return drop.cost();
    }
}
