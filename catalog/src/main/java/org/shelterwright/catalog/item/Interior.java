package org.shelterwright.catalog.item;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.rack.RackBay;

/**
 * What an item is without what goes into it.
 *
 * @param empty its mass without any pieces; where a brief lists the pieces in it, this counts and theirs on top. {@code null}
 *     if it is not known
 * @param bays room for rack-mounted pieces
 */
public record Interior(@Nullable MassData empty, List<RackBay> bays) {
    public Interior {
        bays = List.copyOf(bays);
        Set<String> seen = new HashSet<>();
        for (RackBay bay : bays) {
            if (!seen.add(bay.name())) {
                throw new IllegalArgumentException(
                        "The bay \"" + bay.name() + "\" is given twice. Rename one of them.");
            }
        }
    }

    public Optional<RackBay> bay(String name) {
        return bays.stream().filter(bay -> bay.name().equals(name)).findFirst();
    }
}
