/**
 * Finding ways for the wires of a layout: shortest ways through trays, runs along walls and units between them and the ports,
 * all wires together within what trays hold. What it finds is judged by the ledger.
 */
@NullMarked
package org.shelterwright.solver.route;

import org.jspecify.annotations.NullMarked;
