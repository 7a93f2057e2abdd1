/**
 * Bodies: the inside that is filled, its openings, hard points, floor zones and trays.
 */
@NullMarked
package org.shelterwright.catalog.body;

import org.jspecify.annotations.NullMarked;
