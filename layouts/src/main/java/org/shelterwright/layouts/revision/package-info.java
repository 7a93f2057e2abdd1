/**
 * What differs between two revisions of a layout: units, holes, wires, limits, steps, and the documents that are to be issued
 * again.
 */
@NullMarked
package org.shelterwright.layouts.revision;

import org.jspecify.annotations.NullMarked;
