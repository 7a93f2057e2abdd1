/** The space as a table: every unit with its place and its findings, for the keyboard and for screen readers. */
@NullMarked
package org.shelterwright.app.desk.twin;

import org.jspecify.annotations.NullMarked;
