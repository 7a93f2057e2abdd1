/**
 * The documents of a layout.
 */
@NullMarked
package org.shelterwright.app.report;

import org.jspecify.annotations.NullMarked;
