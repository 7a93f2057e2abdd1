/**
 * What is asked: body, carrier, equipment list, wishes and limits.
 */
@NullMarked
package org.shelterwright.layouts.brief;

import org.jspecify.annotations.NullMarked;
