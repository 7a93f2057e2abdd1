/**
 * The subject power: supply by supply in each operating state, what is drawn against what may be drawn.
 */
@NullMarked
package org.shelterwright.layouts.ledger.power;

import org.jspecify.annotations.NullMarked;
