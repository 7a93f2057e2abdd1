/**
 * What a study asks: many fits of one brief, each with something changed, and the start of every one of them.
 */
@NullMarked
package org.shelterwright.layouts.study;

import org.jspecify.annotations.NullMarked;
