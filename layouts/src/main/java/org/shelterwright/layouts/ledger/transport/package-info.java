/**
 * The ledger of a journey: its limits leg by leg, and what they come to.
 */
@NullMarked
package org.shelterwright.layouts.ledger.transport;

import org.jspecify.annotations.NullMarked;
