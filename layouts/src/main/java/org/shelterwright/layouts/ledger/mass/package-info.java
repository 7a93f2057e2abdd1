/**
 * The subject mass: gross masses with growth and uncertainty, the centre of mass against its window in every load state, and
 * the figures that are missing.
 */
@NullMarked
package org.shelterwright.layouts.ledger.mass;

import org.jspecify.annotations.NullMarked;
