package org.shelterwright.layouts.ledger.fit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.layouts.ledger.fit.HungLoad.OnFixing;

/** Dead weight along the surface on each hard point: W/n on a wall &lt;= shear strength (N). */
final class FixingShear extends FixingLoad {
    FixingShear() {
        super("fit.hung-shear", "shear");
    }

    @Override
    double demandN(OnFixing load) {
        return load.shearN();
    }

    @Override
    @Nullable
    Double capacityN(Strength strength) {
        return strength.shearN();
    }
}
