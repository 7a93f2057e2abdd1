/**
 * The air of the room: heat that comes in and goes out in each operating state, what cools and heats, and fresh air.
 */
@NullMarked
package org.shelterwright.layouts.air;

import org.jspecify.annotations.NullMarked;
