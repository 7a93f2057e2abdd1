/** The space of the body on the desk: seen, turned, pointed at, measured, and changed by hand. */
@NullMarked
package org.shelterwright.app.desk.space;

import org.jspecify.annotations.NullMarked;
