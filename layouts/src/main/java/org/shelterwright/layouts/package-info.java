/**
 * Briefs and layouts, and every limit that a layout must hold.
 */
@NullMarked
package org.shelterwright.layouts;

import org.jspecify.annotations.NullMarked;
