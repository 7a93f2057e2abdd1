/**
 * The ledger: limits, their rows and verdicts, in full and live.
 */
@NullMarked
package org.shelterwright.layouts.ledger;

import org.jspecify.annotations.NullMarked;
