/**
 * Writes drawings as PDF.
 */
@NullMarked
package org.shelterwright.app.pdf;

import org.jspecify.annotations.NullMarked;
