/** The commands that change what is selected: move, turn, mount, pin, arrange, place, take out, duplicate. */
@NullMarked
package org.shelterwright.app.desk.hand.order;

import org.jspecify.annotations.NullMarked;
