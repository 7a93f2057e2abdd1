/** The window, in packages by subject. What can be said without a window stands in classes that need none. */
@NullMarked
package org.shelterwright.app.desk;

import org.jspecify.annotations.NullMarked;
