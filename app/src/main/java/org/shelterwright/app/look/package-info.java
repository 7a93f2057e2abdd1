/**
 * The visual language: colour roles and material tints for light and dark ground, verdict signs and the fence, numerals.
 */
@NullMarked
package org.shelterwright.app.look;

import org.jspecify.annotations.NullMarked;
