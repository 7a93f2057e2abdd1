/**
 * The work pack: what the assembler gets. Step cards on paper, one page for a tablet that works without a network, pick list,
 * tool list and labels.
 */
@NullMarked
package org.shelterwright.app.workpack;

import org.jspecify.annotations.NullMarked;
