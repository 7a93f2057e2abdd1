/**
 * Limits on bringing in and bolting down: openings, order, tools, lifts, balance, and taking out for service.
 */
@NullMarked
package org.shelterwright.layouts.ledger.boltdown;

import org.jspecify.annotations.NullMarked;
