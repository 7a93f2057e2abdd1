/**
 * Items: one kind of equipment each, with its solids, clear zones, fixings, mass and mounting.
 */
@NullMarked
package org.shelterwright.catalog.item;

import org.jspecify.annotations.NullMarked;
