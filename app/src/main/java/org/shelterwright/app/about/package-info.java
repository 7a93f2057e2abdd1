/** What this program says of itself: its name and version, as shown on screens and printed in documents. */
@NullMarked
package org.shelterwright.app.about;

import org.jspecify.annotations.NullMarked;
