package org.shelterwright.layouts.edit;

import java.util.List;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;

/**
 * Gives a unit another name for people; its id stays.
 *
 * @param unit id of the unit
 */
public record RenameUnit(String unit, String newName) implements Edit {
    public RenameUnit {
        if (newName.isBlank()) {
            throw new IllegalArgumentException("The unit \"" + unit + "\" needs a name.");
        }
    }

    @Override
    public String name() {
        return "Rename " + unit + " to " + newName;
    }

    @Override
    public Layout apply(Layout layout) {
        Units.require(layout, unit);
        List<UnitSpec> units = layout.brief().units().stream()
                .map(one -> one.id().equals(unit) ? new UnitSpec(one.id(), newName, one.item(), one.group()) : one)
                .toList();
        return Units.with(
                layout, layout.brief().withUnits(units), layout.parts().items());
    }
}
