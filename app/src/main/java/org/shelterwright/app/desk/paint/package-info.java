/** The drawing model on the screen: colours as the theme wears them, and shapes onto a canvas of the window. */
@NullMarked
package org.shelterwright.app.desk.paint;

import org.jspecify.annotations.NullMarked;
