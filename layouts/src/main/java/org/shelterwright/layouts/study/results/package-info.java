/**
 * What came of the runs of a study: one line a run in a file that is only ever added to, and the measures by which runs are
 * compared.
 */
@NullMarked
package org.shelterwright.layouts.study.results;

import org.jspecify.annotations.NullMarked;
