/** Work that takes long, kept off the window's thread. */
@NullMarked
package org.shelterwright.app.desk.work;

import org.jspecify.annotations.NullMarked;
