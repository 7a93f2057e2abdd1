package org.shelterwright.layouts.edit;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.Figure;

/**
 * Sets a limit of the brief in place of that of the rule sets.
 *
 * @param value in the unit of the figure; {@code null}: that of the rule sets applies again
 */
public record SetLimit(Figure figure, @Nullable Double value) implements Edit {
    public SetLimit {
        if (value != null && !Double.isFinite(value)) {
            throw new IllegalArgumentException("The value of " + figure.id() + " must be a finite number.");
        }
    }

    @Override
    public String name() {
        return value == null ? "Clear " + figure.id() : "Set " + figure.id() + " to " + value;
    }

    @Override
    public Layout apply(Layout layout) {
        Brief old = layout.brief();
        Map<String, Double> limits = new TreeMap<>(old.limits());
        if (value == null) {
            limits.remove(figure.id());
        } else {
            limits.put(figure.id(), value);
        }
        return Units.with(layout, old.withLimits(limits), layout.parts().items());
    }
}
