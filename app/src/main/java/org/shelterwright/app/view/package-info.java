/**
 * How a layout looks: the blocks of units and body with their drawn detail, and their projection into drawings.
 */
@NullMarked
package org.shelterwright.app.view;

import org.jspecify.annotations.NullMarked;
