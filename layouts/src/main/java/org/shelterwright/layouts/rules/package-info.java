/**
 * Rule sets: the values of limits with their sources, chosen and overridden in a brief.
 */
@NullMarked
package org.shelterwright.layouts.rules;

import org.jspecify.annotations.NullMarked;
