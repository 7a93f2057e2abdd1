/** The window itself: how it starts, its frame and pages, its keys, and where the parts of the desk are put together. */
@NullMarked
package org.shelterwright.app.desk.window;

import org.jspecify.annotations.NullMarked;
