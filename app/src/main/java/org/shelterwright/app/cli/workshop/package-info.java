/**
 * What the verbs work with: the parts of the program that the composition root hands them, the files that are named to them,
 * and the folder that they write into.
 */
@NullMarked
package org.shelterwright.app.cli.workshop;

import org.jspecify.annotations.NullMarked;
