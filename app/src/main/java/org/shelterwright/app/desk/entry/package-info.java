/** Fields into which people type, with what is wrong beside them. */
@NullMarked
package org.shelterwright.app.desk.entry;

import org.jspecify.annotations.NullMarked;
