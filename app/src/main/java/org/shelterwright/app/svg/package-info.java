/**
 * Writes drawings as SVG.
 */
@NullMarked
package org.shelterwright.app.svg;

import org.jspecify.annotations.NullMarked;
