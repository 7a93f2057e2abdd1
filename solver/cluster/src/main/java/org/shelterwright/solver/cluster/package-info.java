/**
 * Runs the jobs of a study on a cluster of Apache Spark: each job is one line of JSON in and one out, and what comes back is checked
 * and kept by the driver alone.
 */
@NullMarked
package org.shelterwright.solver.cluster;

import org.jspecify.annotations.NullMarked;
