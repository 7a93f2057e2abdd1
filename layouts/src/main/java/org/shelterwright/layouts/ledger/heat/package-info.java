/**
 * The subject heat: cooling, heating and fresh air that each operating state needs, against what is installed.
 */
@NullMarked
package org.shelterwright.layouts.ledger.heat;

import org.jspecify.annotations.NullMarked;
