package org.shelterwright.layouts.edit;

import java.util.Map;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;

/**
 * Lets two units change places, on station and on the road; each takes what is mounted on or under it along.
 *
 * @param one id of a unit
 * @param other id of another unit
 */
public record SwapUnits(String one, String other) implements Edit {
    public SwapUnits {
        if (one.equals(other)) {
            throw new IllegalArgumentException("The unit \"" + one + "\" cannot change places with itself.");
        }
    }

    @Override
    public String name() {
        return "Swap " + one + " and " + other;
    }

    @Override
    public Layout apply(Layout layout) {
        Placement first = Units.placed(layout, one);
        Placement second = Units.placed(layout, other);
        if (Carried.by(layout, one).contains(other) || Carried.by(layout, other).contains(one)) {
            throw new IllegalArgumentException("The units \"" + one + "\" and \"" + other
                    + "\" cannot change places, since one carries the other. Take one of them out first.");
        }
        return Carried.move(
                layout,
                Map.of(
                        one, new Placement(one, second.station(), second.road(), first.pin()),
                        other, new Placement(other, first.station(), first.road(), second.pin())));
    }
}
