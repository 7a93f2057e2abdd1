package org.shelterwright.app.desk.transport;

import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.scene.JourneyParts;

/** A journey with what it refers to, as it stands in one file. */
public record JourneyWork(Journey journey, JourneyParts parts) {
    /** Another journey with the same parts. */
    JourneyWork with(Journey other) {
        return new JourneyWork(other, parts);
    }
}
