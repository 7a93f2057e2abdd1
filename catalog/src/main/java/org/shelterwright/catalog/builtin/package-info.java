/**
 * The catalog entries that come with the program: invented, with the sizes of standards where one fixes them.
 */
@NullMarked
package org.shelterwright.catalog.builtin;

import org.jspecify.annotations.NullMarked;
