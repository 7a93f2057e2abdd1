/** The ledger column: a bar for each limit with its fence, tightest first, and the card of the finding looked at. */
@NullMarked
package org.shelterwright.app.desk.ledger;

import org.jspecify.annotations.NullMarked;
