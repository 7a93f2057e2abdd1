/**
 * The subject fit: everything is inside, apart, on a surface that takes it, bolted where there are holes, and carried by
 * what it hangs on.
 */
@NullMarked
package org.shelterwright.layouts.ledger.fit;

import org.jspecify.annotations.NullMarked;
