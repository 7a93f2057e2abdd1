package org.shelterwright.layouts.edit;

import java.util.List;
import org.shelterwright.layouts.brief.Occupant;
import org.shelterwright.layouts.layout.Layout;

/**
 * Sets who works or rides inside the body.
 *
 * @param occupants one for each person
 */
public record SetOccupants(List<Occupant> occupants) implements Edit {
    public SetOccupants {
        occupants = List.copyOf(occupants);
    }

    @Override
    public String name() {
        return "Set people inside to " + occupants.size();
    }

    @Override
    public Layout apply(Layout layout) {
        occupants.forEach(one -> Units.require(layout, one.unit()));
        return Units.with(
                layout, layout.brief().withOccupants(occupants), layout.parts().items());
    }
}
