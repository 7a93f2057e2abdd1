/**
 * Carriers: truck chassis and trailers, with axles, ratings, deck, tanks and seats.
 */
@NullMarked
package org.shelterwright.catalog.carrier;

import org.jspecify.annotations.NullMarked;
