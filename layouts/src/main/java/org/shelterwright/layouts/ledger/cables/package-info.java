/**
 * Limits of cables: routes, lengths, tray fill, bends, separation, current, voltage drop, loss, connectors and entry panels.
 */
@NullMarked
package org.shelterwright.layouts.ledger.cables;

import org.jspecify.annotations.NullMarked;
