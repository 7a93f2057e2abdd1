/**
 * Packing loose pieces into stowage places.
 */
@NullMarked
package org.shelterwright.solver.inside.pack;

import org.jspecify.annotations.NullMarked;
