/**
 * What carries carriers, bodies and crates on a leg of a journey: wagons, lorries, containers, holds, decks; the outlines and line
 * categories of the ways that they take; friction, and what things are lashed with.
 */
@NullMarked
package org.shelterwright.catalog.transit;

import org.jspecify.annotations.NullMarked;
