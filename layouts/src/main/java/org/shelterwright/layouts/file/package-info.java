/**
 * Files of briefs and layouts: reading with checks at the door, and saving without ever losing what was there.
 */
@NullMarked
package org.shelterwright.layouts.file;

import org.jspecify.annotations.NullMarked;
