package org.shelterwright.layouts.transport.edit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/**
 * Sets what the method of loading says of vehicles.
 *
 * @param load id of the load
 * @param handBrake {@code null} if the method does not say
 * @param gear {@code null} if the method does not say
 * @param packed whether what is on it is packed from wall to wall
 */
public record SetMethod(String load, Load.@Nullable HandBrake handBrake, Load.@Nullable Gear gear, boolean packed)
        implements JourneyEdit {
    @Override
    public String name() {
        return "Set the method of " + load;
    }

    @Override
    public Journey apply(Journey journey) {
        return journey.with(
                Loads.named(journey, load).withMethod(handBrake, gear).withPacked(packed));
    }
}
