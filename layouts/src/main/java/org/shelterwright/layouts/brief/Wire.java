package org.shelterwright.layouts.brief;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A cable that a brief asks for.
 *
 * @param from unit and port, such as "rack-1/power"
 * @param to unit and port
 * @param type cable type
 * @param longest greatest length (µm); {@code null} if none is set
 */
public record Wire(
        String id,
        String from,
        String to,
        String type,
        @Nullable @Millimetres Integer longest) {}
