/** The selected units in figures: place, turn, surface, pins, mass, fixings; each can be typed. */
@NullMarked
package org.shelterwright.app.desk.unit;

import org.jspecify.annotations.NullMarked;
