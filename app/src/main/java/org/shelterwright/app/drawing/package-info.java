/**
 * The one drawing model of all documents: immutable shapes in millimetres on paper, x to the right and y down, in groups that serve as layers. It knows no toolkit and no file format.
 */
@NullMarked
package org.shelterwright.app.drawing;

import org.jspecify.annotations.NullMarked;
