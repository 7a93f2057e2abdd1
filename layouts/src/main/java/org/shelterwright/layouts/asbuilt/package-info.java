/**
 * As built: what was signed and measured while bolting down, what scales read, and how far both are from layout and prediction.
 */
@NullMarked
package org.shelterwright.layouts.asbuilt;

import org.jspecify.annotations.NullMarked;
