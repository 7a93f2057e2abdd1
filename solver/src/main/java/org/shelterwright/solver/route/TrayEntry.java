package org.shelterwright.solver.route;

/**
 * A run outside trays that comes into one.
 *
 * @param tray its number in the table
 * @param station where along it (µm)
 * @param cost laying cost of the run
 * @param barred whether it may not be used
 */
record TrayEntry(int tray, int station, long cost, boolean barred) {}
