/** The bolt-down page: the steps of the order, where the work stands, the way in of each unit in space, who does what when. */
@NullMarked
package org.shelterwright.app.desk.bolt;

import org.jspecify.annotations.NullMarked;
