/**
 * Finds what goes on which car of a journey, where it stands there, and how it is held. Every result is checked by {@code layouts} from
 * scratch before anyone sees it.
 */
@NullMarked
package org.shelterwright.solver.transport;

import org.jspecify.annotations.NullMarked;
