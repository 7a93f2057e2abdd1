/**
 * Paints pictures of a layout with a depth buffer of its own, so that no screen and no 3D toolkit is needed.
 */
@NullMarked
package org.shelterwright.app.picture;

import org.jspecify.annotations.NullMarked;
