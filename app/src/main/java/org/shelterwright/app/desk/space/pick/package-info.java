/** What lies under the pointer: lines of sight against the exact cuboids of a scene. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.space.pick;

import org.jspecify.annotations.NullMarked;
