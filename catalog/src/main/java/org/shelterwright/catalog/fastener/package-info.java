/**
 * Fasteners: threads and property classes with their loads.
 */
@NullMarked
package org.shelterwright.catalog.fastener;

import org.jspecify.annotations.NullMarked;
