/**
 * The subject stability: a rigid vehicle on rigid wheels, at rest. Roll of springs and tyres is not in it: real vehicles tip
 * earlier.
 */
@NullMarked
package org.shelterwright.layouts.ledger.stability;

import org.jspecify.annotations.NullMarked;
