package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;

/**
 * Sets what of a unit's place the search must leave as it is.
 *
 * @param unit id of the unit
 */
public record PinUnit(String unit, Pin pin) implements Edit {
    @Override
    public String name() {
        return (pin.equals(Pin.NONE) ? "Unpin " : "Pin ") + unit;
    }

    @Override
    public Layout apply(Layout layout) {
        return layout.with(Units.placed(layout, unit).withPin(pin));
    }
}
