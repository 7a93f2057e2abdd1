/**
 * The visual language: colour roles and material tints for light ground, verdict signs and the fence, numerals.
 */
@NullMarked
package org.shelterwright.app.look;

import org.jspecify.annotations.NullMarked;
