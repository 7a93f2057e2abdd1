package org.shelterwright.layouts.ledger.transport.burden;

import java.util.List;
import org.shelterwright.layouts.ledger.transport.LegLimit;

/** The limits of what cars bear. */
public final class BurdenLimits {
    private BurdenLimits() {}

    public static List<LegLimit> all() {
        return List.of(
                new CarLoad(),
                new CarAxle(),
                new GroupRatio(),
                new SideRatio(),
                new MetreLoad(),
                new FloorAxle(),
                new FloorSpread(),
                new FloorPressure(),
                new HalfLength(),
                new LoadCentre());
    }
}
