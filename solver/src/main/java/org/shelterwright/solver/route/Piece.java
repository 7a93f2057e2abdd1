package org.shelterwright.solver.route;

import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.solver.route.drop.Drop;

/** What a link of the network stands for. */
sealed interface Piece {
    /** A run outside trays, from the first node of its link to the second. */
    record Free(Drop drop) implements Piece {}

    /** A stretch of a compartment of a tray, from the station of the first node to that of the second. */
    record InTray(TrayPath tray, int part, int from, int to) implements Piece {}

    /** A place where trays meet; the cable moves nowhere. */
    record Joint() implements Piece {}

    /** The places of an entry panel. */
    record Passage(String panel) implements Piece {}
}
