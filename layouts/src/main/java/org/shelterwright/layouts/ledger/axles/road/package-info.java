/**
 * Road rules that are more than single figures: Directive 96/53/EC, Annex I, and 23 CFR 658 with the bridge formula.
 */
@NullMarked
package org.shelterwright.layouts.ledger.axles.road;

import org.jspecify.annotations.NullMarked;
