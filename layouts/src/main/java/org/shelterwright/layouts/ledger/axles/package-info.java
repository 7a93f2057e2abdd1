/**
 * The subject axles: loads of axles and wheels, shares, side-to-side difference, coupling and combination, and the road rules
 * that a brief chooses.
 */
@NullMarked
package org.shelterwright.layouts.ledger.axles;

import org.jspecify.annotations.NullMarked;
