/**
 * The verbs of the command line, one class each.
 */
@NullMarked
package org.shelterwright.app.cli.verb;

import org.jspecify.annotations.NullMarked;
