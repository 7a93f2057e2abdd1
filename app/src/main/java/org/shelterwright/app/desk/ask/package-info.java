/** Questions to the person at the desk, so that what asks them needs no window. */
@NullMarked
package org.shelterwright.app.desk.ask;

import org.jspecify.annotations.NullMarked;
