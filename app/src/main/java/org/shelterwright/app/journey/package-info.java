/**
 * The documents of a journey: the table of its legs, load sheets with outline and lashings, packing lists, placards, ways to go.
 */
@NullMarked
package org.shelterwright.app.journey;

import org.jspecify.annotations.NullMarked;
