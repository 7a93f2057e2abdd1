/**
 * What findings are made of: the situation that governs, the least shift that mends, and the words for both.
 */
@NullMarked
package org.shelterwright.layouts.ledger.mend;

import org.jspecify.annotations.NullMarked;
