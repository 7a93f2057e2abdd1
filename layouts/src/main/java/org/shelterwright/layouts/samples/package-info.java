/**
 * The samples that come with the program: invented briefs, and the layouts found for them.
 */
@NullMarked
package org.shelterwright.layouts.samples;

import org.jspecify.annotations.NullMarked;
