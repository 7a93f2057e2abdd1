/**
 * Exact geometry: whole micrometres, axis-aligned cuboids, quarter turns. Touching is not overlapping.
 */
@NullMarked
package org.shelterwright.catalog.space;

import org.jspecify.annotations.NullMarked;
