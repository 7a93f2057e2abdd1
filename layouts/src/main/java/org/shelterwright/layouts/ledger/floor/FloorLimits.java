package org.shelterwright.layouts.ledger.floor;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject floor. */
public final class FloorLimits {
    private FloorLimits() {}

    public static List<Limit> all() {
        return List.of(
                new PatchPressure(),
                new ConcentratedLoad(),
                new ZoneLoad(),
                new LoadPerMetre(),
                new MemberMoment(),
                new MemberShear());
    }
}
