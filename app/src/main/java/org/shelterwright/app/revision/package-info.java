/** Two revisions of a layout on one page, and their differences as tables. */
@NullMarked
package org.shelterwright.app.revision;

import org.jspecify.annotations.NullMarked;
