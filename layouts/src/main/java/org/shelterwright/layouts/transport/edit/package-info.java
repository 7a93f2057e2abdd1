/** Changes that a person makes to a journey: what stands where on which car, how it is held, which car it is. All are values. */
@NullMarked
package org.shelterwright.layouts.transport.edit;

import org.jspecify.annotations.NullMarked;
