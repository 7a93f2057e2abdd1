package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.layout.Layout;

/** Adds a wish to the brief. */
public record AddWish(Wish wish) implements Edit {
    public AddWish {
        Wish.Kind kind = wish.kind();
        if (wish.units().size() < kind.leastUnits()) {
            throw new IllegalArgumentException(
                    "This wish names " + wish.units().size() + " units; it needs at least " + kind.leastUnits() + ".");
        }
        boolean spaced = kind == Wish.Kind.NEAR || kind == Wish.Kind.APART;
        Integer distance = wish.distance();
        if (spaced && (distance == null || distance < 0)) {
            throw new IllegalArgumentException(
                    "A wish for units near each other or apart needs a distance of at least 0 mm.");
        }
        boolean faced = !spaced && kind != Wish.Kind.SAME_SIDE;
        if (faced && (wish.face() == null || !wish.face().upright())) {
            throw new IllegalArgumentException("This wish needs a face: front, rear, left or right.");
        }
    }

    @Override
    public String name() {
        return "Wish " + String.join(", ", wish.units());
    }

    @Override
    public Layout apply(Layout layout) {
        wish.units().forEach(unit -> Units.require(layout, unit));
        List<Wish> wishes = new ArrayList<>(layout.brief().wishes());
        wishes.add(wish);
        return Units.with(
                layout, layout.brief().withWishes(wishes), layout.parts().items());
    }
}
