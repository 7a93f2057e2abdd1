/**
 * The general arrangement drawing of a layout.
 */
@NullMarked
package org.shelterwright.app.arrangement;

import org.jspecify.annotations.NullMarked;
