/** What is remembered of a person's wishes from one day to the next. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.preferences;

import org.jspecify.annotations.NullMarked;
