package org.shelterwright.layouts.power;

import org.jspecify.annotations.Nullable;

/**
 * A datum of power that is missing.
 *
 * @param unit id of the unit that lacks it; {@code null} if no unit does
 * @param sentence what is missing and where to give it
 */
public record PowerGap(@Nullable String unit, String sentence) {}
