/**
 * Exact answers to "can this slide from here to there": free space of a composite of cuboids that moves along the axes
 * past obstacles. Exact fits are free.
 */
@NullMarked
package org.shelterwright.catalog.sliding;

import org.jspecify.annotations.NullMarked;
