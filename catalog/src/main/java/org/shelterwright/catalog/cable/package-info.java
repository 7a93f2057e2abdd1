/**
 * Cables: what lies in trays and joins ports, with conductors after IEC 60228, attenuation of lines, and the American wire
 * gauge.
 */
@NullMarked
package org.shelterwright.catalog.cable;

import org.jspecify.annotations.NullMarked;
