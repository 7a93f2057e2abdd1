package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import org.shelterwright.layouts.ledger.transport.LegLimit;

/** The limits of places on cars. */
public final class PlaceLimits {
    private PlaceLimits() {}

    public static List<LegLimit> all() {
        return List.of(
                new EverythingGoes(),
                new DeckSpace(),
                new InsideCar(),
                new Apart(),
                new VehicleGaps(),
                new StandsOn(),
                new Stacking(),
                new Companions(),
                new OutlineClear(),
                new DoorPasses());
    }
}
