/**
 * Limits of the subject stowage: every loose piece has a place that holds it on the road and gives it to hand on station.
 */
@NullMarked
package org.shelterwright.layouts.ledger.stowage;

import org.jspecify.annotations.NullMarked;
