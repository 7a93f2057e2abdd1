package org.shelterwright.layouts.ledger.fit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.layouts.ledger.fit.HungLoad.OnFixing;

/** Dead weight square to the surface on each hard point: W/n under the roof, M h / sum(h²) on a wall &lt;= pull-out (N). */
final class FixingPullOut extends FixingLoad {
    FixingPullOut() {
        super("fit.hung-pull-out", "pull-out");
    }

    @Override
    double demandN(OnFixing load) {
        return load.pullN();
    }

    @Override
    @Nullable
    Double capacityN(Strength strength) {
        return strength.pullOutN();
    }
}
