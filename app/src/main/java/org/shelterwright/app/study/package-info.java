/**
 * What is shown of a study: its table, the plot of two measures against each other, and the comparison of chosen runs.
 */
@NullMarked
package org.shelterwright.app.study;

import org.jspecify.annotations.NullMarked;
