/**
 * Editing by hand without a window: drags that catch on holes, faces, walls and the grid, distances to neighbours,
 * numbers as people type them, and the commands that change what is selected.
 */
@NullMarked
package org.shelterwright.app.desk.hand;

import org.jspecify.annotations.NullMarked;
