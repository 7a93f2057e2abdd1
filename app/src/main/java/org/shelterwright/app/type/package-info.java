/**
 * The typeface of all documents, and how wide its texts are.
 */
@NullMarked
package org.shelterwright.app.type;

import org.jspecify.annotations.NullMarked;
