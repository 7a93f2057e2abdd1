/**
 * Where a figure comes from, and how far it can be trusted.
 */
@NullMarked
package org.shelterwright.catalog.source;

import org.jspecify.annotations.NullMarked;
