package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;

/**
 * Sets how many people sit in the cab.
 *
 * @param people zero or more
 */
public record SetCrew(int people) implements Edit {
    public SetCrew {
        if (people < 0) {
            throw new IllegalArgumentException("The crew of " + people + " must be at least 0.");
        }
    }

    @Override
    public String name() {
        return "Set crew to " + people;
    }

    @Override
    public Layout apply(Layout layout) {
        return Units.with(
                layout, layout.brief().withCrew(people), layout.parts().items());
    }
}
