/**
 * What a leg asks of its way: road rules, ramps, bridges, lifting, and the restraint of what is inside a body.
 */
@NullMarked
package org.shelterwright.layouts.ledger.transport.way;

import org.jspecify.annotations.NullMarked;
