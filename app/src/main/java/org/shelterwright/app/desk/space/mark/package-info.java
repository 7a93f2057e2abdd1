/** What lies over the space as drawing: names, tags, marks of findings, the centre of mass, distances. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.space.mark;

import org.jspecify.annotations.NullMarked;
