/**
 * Sheets of drawings and reports: frame, title block, paragraphs.
 */
@NullMarked
package org.shelterwright.app.sheet;

import org.jspecify.annotations.NullMarked;
