/**
 * The check of a layout: all subjects of the ledger put together.
 */
@NullMarked
package org.shelterwright.layouts.check;

import org.jspecify.annotations.NullMarked;
