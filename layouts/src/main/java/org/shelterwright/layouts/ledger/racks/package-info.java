/**
 * Limits of the subject racks: what is in the bays of racks holds in them, fits, is fed, stays cool and can be reached.
 */
@NullMarked
package org.shelterwright.layouts.ledger.racks;

import org.jspecify.annotations.NullMarked;
