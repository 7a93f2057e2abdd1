package org.shelterwright.layouts.ledger.floor;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.layouts.ledger.floor.MemberLoads.Governing;
import org.shelterwright.layouts.ledger.floor.MemberLoads.MemberLoad;

/** The greatest bending moment of each cross-member against its rating: {@code max |M| ≤ M_r}. */
final class MemberMoment extends MemberLimit {
    MemberMoment() {
        super("floor.member-moment", "Bending moment", "momentNm", "N·m");
    }

    @Override
    @Nullable
    Double rating(CrossMember member) {
        return member.momentNm();
    }

    @Override
    Governing governing(MemberLoad load) {
        return load.moment();
    }

    @Override
    double demand(BeamSweep sweep) {
        return sweep.momentKgM() * FloorLoads.G;
    }
}
