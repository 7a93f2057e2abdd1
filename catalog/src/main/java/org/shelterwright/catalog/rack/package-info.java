/**
 * Racks: the sizes and the hole pattern of the 19-inch standard, and the bays of an item that take rack-mounted pieces.
 */
@NullMarked
package org.shelterwright.catalog.rack;

import org.jspecify.annotations.NullMarked;
