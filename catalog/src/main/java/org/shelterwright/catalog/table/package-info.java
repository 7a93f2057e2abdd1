/**
 * A person's equipment list from a CSV or XLSX table. Nothing is guessed silently: the mapping of columns is a value, and
 * everything dropped, doubtful or assumed is listed with the address of its cell.
 */
@NullMarked
package org.shelterwright.catalog.table;

import org.jspecify.annotations.NullMarked;
