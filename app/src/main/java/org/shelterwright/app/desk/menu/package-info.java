/** Commands within reach of the pointer: buttons, and lists that a button opens. They hold no order of their own. */
@NullMarked
package org.shelterwright.app.desk.menu;

import org.jspecify.annotations.NullMarked;
