/**
 * Limits on restraint: whether the fixings of every unit hold it under the load cases that apply.
 */
@NullMarked
package org.shelterwright.layouts.ledger.restraint;

import org.jspecify.annotations.NullMarked;
