package org.shelterwright.layouts.ledger.access;

import org.shelterwright.layouts.scene.PlacedZone;

/** What zones are called in findings. */
final class ZoneWords {
    private ZoneWords() {}

    /** Such as: the service zone "front" of Rack 2. */
    static String of(PlacedZone zone) {
        String kind = switch (zone.purpose()) {
            case SERVICE -> "the service zone";
            case SWING -> "the way of";
            case SEAT -> "the seat zone";
            case AIR -> "the air zone";
            case EXIT -> "the exit zone";
        };
        return kind + " \"" + zone.name() + "\" of " + zone.owner().name();
    }
}
