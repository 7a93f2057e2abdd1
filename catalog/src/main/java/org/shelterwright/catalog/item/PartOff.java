package org.shelterwright.catalog.item;

import java.util.List;
import org.shelterwright.catalog.source.Figures;

/**
 * A part that can be taken off an item while it is brought in.
 *
 * @param solids names of the solids of the item that go with it; empty if it fills nothing of its own
 * @param massKg (kg)
 * @param minutes to take it off and to put it on again (min)
 */
public record PartOff(String name, List<String> solids, double massKg, double minutes) {
    public PartOff {
        solids = List.copyOf(solids);
        Figures.within("mass of a part (kg)", massKg, 0, MassData.LARGEST_KG);
        Figures.notNegative("time for a part (min)", minutes);
    }
}
