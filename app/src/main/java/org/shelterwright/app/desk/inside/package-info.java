/** The inside of a unit on the desk: its racks and stowage places opened, and their pieces arranged by hand. */
@NullMarked
package org.shelterwright.app.desk.inside;

import org.jspecify.annotations.NullMarked;
