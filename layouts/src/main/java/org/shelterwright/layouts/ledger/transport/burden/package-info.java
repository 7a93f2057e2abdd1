/**
 * What a car and its floor bear: load, axles, bogies, sides, metres, floor.
 */
@NullMarked
package org.shelterwright.layouts.ledger.transport.burden;

import org.jspecify.annotations.NullMarked;
