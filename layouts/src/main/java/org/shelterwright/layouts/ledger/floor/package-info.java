/**
 * The subject floor: what units press on the floor through their contact patches at 1 g, and what zones and cross-members bear
 * of it.
 */
@NullMarked
package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.NullMarked;
