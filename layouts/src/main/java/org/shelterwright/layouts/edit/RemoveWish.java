package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Layout;

/** Removes a wish from the brief. */
public record RemoveWish(Wish wish) implements Edit {
    @Override
    public String name() {
        return "No longer wish " + String.join(", ", wish.units());
    }

    @Override
    public Layout apply(Layout layout) {
        List<Wish> wishes = new ArrayList<>(layout.brief().wishes());
        if (!wishes.remove(wish)) {
            throw new IllegalArgumentException("The brief has no such wish.");
        }
        return Units.with(
                layout, layout.brief().withWishes(wishes), layout.parts().items());
    }
}
