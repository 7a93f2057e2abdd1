package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.layouts.ledger.floor.MemberLoads.Governing;
import org.shelterwright.layouts.ledger.floor.MemberLoads.MemberLoad;

/** The greatest shear of each cross-member against its rating: {@code max |V| ≤ V_r}. */
final class MemberShear extends MemberLimit {
    MemberShear() {
        super("floor.member-shear", "Shear", "shearN", "N");
    }

    @Override
    @Nullable
    Double rating(CrossMember member) {
        return member.shearN();
    }

    @Override
    Governing governing(MemberLoad load) {
        return load.shear();
    }

    @Override
    double demand(BeamSweep sweep) {
        return sweep.shearKg() * FloorLoads.G;
    }
}
