/**
 * The command line: the only place that prints.
 */
@NullMarked
package org.shelterwright.app.cli;

import org.jspecify.annotations.NullMarked;
