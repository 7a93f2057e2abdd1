/**
 * What is asked and where everything is: briefs, layouts, their files, every limit and the ledger that
 * answers it. Nothing in this module searches or draws.
 */
@NullMarked
package org.shelterwright.layouts;

import org.jspecify.annotations.NullMarked;
