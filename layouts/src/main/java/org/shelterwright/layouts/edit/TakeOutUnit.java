package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;

/**
 * Takes a unit out, so that it is to be placed again; what is mounted on or under it comes out too.
 *
 * @param unit id of the unit
 */
public record TakeOutUnit(String unit) implements Edit {
    @Override
    public String name() {
        return "Take out " + unit;
    }

    @Override
    public Layout apply(Layout layout) {
        Units.placed(layout, unit);
        return Carried.takeOut(layout, unit);
    }
}
