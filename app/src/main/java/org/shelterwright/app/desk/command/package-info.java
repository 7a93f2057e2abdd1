/** What can be done, each with its name, its keys and, while it cannot be done, the reason. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.command;

import org.jspecify.annotations.NullMarked;
