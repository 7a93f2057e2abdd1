/** Solids and lines of the drawing model as meshes: flat colours, edges of constant width, one group a unit. */
@NullMarked
package org.shelterwright.app.desk.space.solid;

import org.jspecify.annotations.NullMarked;
