package org.shelterwright.layouts.ledger.transport.securing;

import java.util.List;
import org.shelterwright.layouts.ledger.transport.LegLimit;

/** The limits of how things are held. */
public final class SecuringLimits {
    private SecuringLimits() {}

    public static List<LegLimit> all() {
        return List.of(
                new Held(),
                new Tips(),
                new PartForce(PartForce.Part.LASHING),
                new PartForce(PartForce.Part.EYE),
                new PartForce(PartForce.Part.ANCHOR),
                new LashingAngle(),
                new LashingFits(),
                new Crossing(),
                new OneWay(),
                new TensionerReach(),
                new MethodStated(),
                new PackedWalls(),
                new UsTiedowns());
    }
}
