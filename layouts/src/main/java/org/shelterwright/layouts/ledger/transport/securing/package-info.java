/**
 * How things are held on a car: friction, blocks, tie-downs and direct lashings.
 */
@NullMarked
package org.shelterwright.layouts.ledger.transport.securing;

import org.jspecify.annotations.NullMarked;
