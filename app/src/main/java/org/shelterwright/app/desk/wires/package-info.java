/**
 * The wires of the brief: a list with their routes and what fills the trays, a new wire by typing or by picking units in the view,
 * routing, pinning and taking out, each one step that can be undone.
 */
@NullMarked
package org.shelterwright.app.desk.wires;

import org.jspecify.annotations.NullMarked;
