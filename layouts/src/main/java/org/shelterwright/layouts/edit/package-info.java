/**
 * Changes to a layout as values, and the history of them.
 */
@NullMarked
package org.shelterwright.layouts.edit;

import org.jspecify.annotations.NullMarked;
