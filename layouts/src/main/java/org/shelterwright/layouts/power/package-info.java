/**
 * Power: which unit draws from which supply, and what flows in each operating state.
 */
@NullMarked
package org.shelterwright.layouts.power;

import org.jspecify.annotations.NullMarked;
