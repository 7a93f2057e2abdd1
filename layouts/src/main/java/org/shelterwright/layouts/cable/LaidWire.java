package org.shelterwright.layouts.cable;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Route;

/**
 * A wire of the brief in a layout.
 *
 * @param from its beginning; {@code null} if the brief names no such thing
 * @param to its end
 * @param cable its cable: that of its route, else of its type; {@code null} if the layout does not hold it
 * @param shape its route; {@code null} if it has none, or one that does not hold
 * @param gap why there is no route that holds; {@code null} if there is one
 * @param cutLength length to cut, with spare and with what lies outside (µm); -1 if not known
 */
public record LaidWire(
        Wire wire,
        @Nullable WireEnd from,
        @Nullable WireEnd to,
        @Nullable Cable cable,
        @Nullable RouteShape shape,
        @Nullable String gap,
        long cutLength) {
    public boolean routed() {
        return gap == null && shape != null;
    }

    /** Such as "Wire w1 (Telemetry rack 1, power)". */
    public String name() {
        WireEnd end = to;
        return "Wire " + wire.id() + (end == null ? "" : " to " + end.name());
    }

    /** Ids of the units at its ends, without the body. */
    public List<String> units() {
        return Stream.of(wire.from(), wire.to())
                .map(WireEnd::owner)
                .filter(owner -> !owner.equals("body"))
                .distinct()
                .toList();
    }

    /** The panel through which it goes, if it does. */
    public Optional<String> panel() {
        Route route = shape == null ? null : shape.route();
        return Stream.of(from, to)
                .flatMap(end -> end == null ? Stream.empty() : Stream.ofNullable(end.panel()))
                .map(panel -> panel.name())
                .findFirst()
                .or(() -> Optional.ofNullable(route == null ? null : route.panel()));
    }

    /** Whether a part of it lies outside the body. */
    public boolean goesOutside() {
        WireEnd a = from;
        WireEnd b = to;
        return a != null && a.outside() || b != null && b.outside();
    }

    /** The least cuboid that holds its route; {@code null} if it has none inside. */
    public @Nullable Box place() {
        return shape == null ? null : shape.hull();
    }
}
