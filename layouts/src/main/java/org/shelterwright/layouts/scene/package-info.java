/**
 * A layout resolved for checking: every unit with its solids, zones and fixings in the frame of the body.
 */
@NullMarked
package org.shelterwright.layouts.scene;

import org.jspecify.annotations.NullMarked;
