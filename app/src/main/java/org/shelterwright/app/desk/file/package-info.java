/** The layout's file: opening, saving, keeping unsaved work safe, and noticing what others do. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.file;

import org.jspecify.annotations.NullMarked;
