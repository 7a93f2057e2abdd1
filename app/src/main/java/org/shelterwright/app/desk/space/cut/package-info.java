/** The plane that cuts the space open, and what it leaves. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.space.cut;

import org.jspecify.annotations.NullMarked;
