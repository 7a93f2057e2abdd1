/**
 * The results of a study in the window: the table of runs with filters, the trade-off of two measures, chosen runs side by side, and
 * the way from a run to its layout.
 */
@NullMarked
package org.shelterwright.app.desk.study;

import org.jspecify.annotations.NullMarked;
