/**
 * A journey resolved for checking: the shape, mass and wheels of each piece, where it stands on its car, and what the car bears.
 */
@NullMarked
package org.shelterwright.layouts.transport.scene;

import org.jspecify.annotations.NullMarked;
