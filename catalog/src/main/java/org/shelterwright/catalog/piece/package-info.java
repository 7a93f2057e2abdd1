/**
 * Pieces: what goes into units - rack-mounted equipment and loose things that are stowed.
 */
@NullMarked
package org.shelterwright.catalog.piece;

import org.jspecify.annotations.NullMarked;
