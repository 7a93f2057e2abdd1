/** From where the space is seen: projection onto the screen, lines of sight back, and moves of the eye. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.space.eye;

import org.jspecify.annotations.NullMarked;
