/** Distances that a person takes in the space, and keeps until they are cleared. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.space.measure;

import org.jspecify.annotations.NullMarked;
