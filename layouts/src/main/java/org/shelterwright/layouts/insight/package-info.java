/**
 * What a layout has to give: the room and the reserves that are left, how much each unit may grow, and the chance that a limit is
 * exceeded. Everything is asked of the same limits as the ledger.
 */
@NullMarked
package org.shelterwright.layouts.insight;

import org.jspecify.annotations.NullMarked;
