package org.shelterwright.layouts.edit;

import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;

/**
 * Sets the order of bringing in and bolting down.
 *
 * @param order the order; {@code null} takes it away
 */
public record SetBoltDown(@Nullable BoltDownOrder order) implements Edit {
    @Override
    public String name() {
        return order == null ? "Take the bolt-down order away" : "Set the bolt-down order";
    }

    @Override
    public Layout apply(Layout layout) {
        if (order != null) {
            Set<String> known =
                    layout.brief().units().stream().map(UnitSpec::id).collect(Collectors.toSet());
            order.units().stream().filter(unit -> !known.contains(unit)).forEach(unit -> Units.require(layout, unit));
        }
        return layout.withBoltDown(order);
    }
}
