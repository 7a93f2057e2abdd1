/**
 * Limits on lifting the filled body by a four-leg sling.
 */
@NullMarked
package org.shelterwright.layouts.ledger.lifting;

import org.jspecify.annotations.NullMarked;
