/**
 * Figures of catalog entries that a thing of that kind can hardly have: most often a wrong unit or a slipped point.
 */
@NullMarked
package org.shelterwright.catalog.plausible;

import org.jspecify.annotations.NullMarked;
