/**
 * Writes tables as CSV and XLSX.
 */
@NullMarked
package org.shelterwright.app.tables;

import org.jspecify.annotations.NullMarked;
