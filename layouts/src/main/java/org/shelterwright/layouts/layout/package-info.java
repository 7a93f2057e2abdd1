/**
 * A brief and where everything is.
 */
@NullMarked
package org.shelterwright.layouts.layout;

import org.jspecify.annotations.NullMarked;
