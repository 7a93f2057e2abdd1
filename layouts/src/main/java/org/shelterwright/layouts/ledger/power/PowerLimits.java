package org.shelterwright.layouts.ledger.power;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject power. */
public final class PowerLimits {
    private PowerLimits() {}

    public static List<Limit> all() {
        return List.of(
                new SupplyAssigned(),
                new SupplyLoad(),
                new StartCurrent(),
                new PhaseBalance(),
                new GeneratorSize(),
                new BatteryEndurance(),
                new ChargeTime(),
                new NeededOn(),
                new KeptApart());
    }
}
