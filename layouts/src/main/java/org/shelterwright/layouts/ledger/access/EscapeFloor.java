package org.shelterwright.layouts.ledger.access;

import java.util.List;
import org.shelterwright.catalog.space.Rect;

/** The free part of the floor with every drawer, slide-out and flap out; made once for a scene. */
record EscapeFloor(List<Rect> free) {
    static List<Rect> of(Floor floor) {
        return floor.scene().derived(EscapeFloor.class, scene -> made(floor)).free();
    }

    private static EscapeFloor made(Floor floor) {
        return new EscapeFloor(FreeFloor.of(floor.room(), floor.obstaclesWithDrawersOut()));
    }
}
