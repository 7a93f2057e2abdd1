package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.FloorZone;

/**
 * The load of each contact patch against the concentrated load of its zone: {@code P ≤ P_zone}.
 *
 * <p>Source: the ratings of the floor zones in the catalog.
 */
final class ConcentratedLoad extends PatchLimit {
    ConcentratedLoad() {
        super("floor.concentrated", "Concentrated load", "concentratedKg", "kg", "stands with");
    }

    @Override
    @Nullable
    Double rating(FloorZone zone) {
        return zone.concentratedKg();
    }

    @Override
    double demand(double massKg, double areaM2) {
        return massKg;
    }
}
