package org.shelterwright.layouts.ledger.axles;

import java.util.List;
import java.util.stream.Stream;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.axles.road.RoadLimits;

/** The limits of the subject axles, road rules included. */
public final class AxleLimits {
    private AxleLimits() {}

    public static List<Limit> all() {
        List<Limit> own = List.of(
                new AxleLoad(),
                new WheelLoad(),
                new AxleContact(),
                new SteeredShare(),
                new DrivenShare(),
                new SideDifference(),
                new GrossLimit(),
                new CombinationMass(),
                new CouplingLoad());
        return Stream.concat(own.stream(), RoadLimits.all().stream()).toList();
    }
}
