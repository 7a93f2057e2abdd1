/**
 * Where things stand on a car: within it, apart, supported, clear of the outline, through the door.
 */
@NullMarked
package org.shelterwright.layouts.ledger.transport.place;

import org.jspecify.annotations.NullMarked;
