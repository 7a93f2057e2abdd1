/**
 * Cables of a layout: where wires begin and end, what they carry, how long their routes are, how full they make the trays, and
 * the formulas of voltage drop, loss, bends and fill. No rule is judged here: the ledger does that.
 */
@NullMarked
package org.shelterwright.layouts.cable;

import org.jspecify.annotations.NullMarked;
