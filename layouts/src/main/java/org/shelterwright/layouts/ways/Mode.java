package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Bringing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Face;

/**
 * In what state a unit is looked at on its way.
 *
 * @param apart whether the parts that come off it are off
 * @param lyingOn side of its item that it is laid on, once it is away from its place; {@code null}: it stays upright
 */
record Mode(boolean apart, @Nullable Face lyingOn) {
    static final Mode AS_IT_IS = new Mode(false, null);

    /** The states in which an item may be brought in, the plainest first. */
    static List<Mode> of(Item item) {
        Bringing bringing = item.bringing();
        if (bringing == null) {
            return List.of(AS_IT_IS);
        }
        List<Mode> modes = new ArrayList<>();
        for (boolean apart : bringing.partsOff().isEmpty() ? new boolean[] {false} : new boolean[] {false, true}) {
            modes.add(new Mode(apart, null));
            bringing.lyingOn().forEach(side -> modes.add(new Mode(apart, side)));
        }
        return modes;
    }
}
