package org.shelterwright.layouts.ledger.cables;

import java.util.Optional;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.cable.Bends;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Between corners there is room to bend a cable no tighter than it bears: a straight between two quarter bends has at least
 * 2 R, one before or behind one bend R.
 *
 * <p>Source: data of the cable. Four times the diameter for four-pair cable, ten times for fibre and many pairs
 * (MIL-HDBK-1012/3, as quoted); four times for fixed flexible cable (common practice).
 */
final class BendRadius extends WireLimit {
    BendRadius() {
        super("cables.bend", "Bend radius of wire", Severity.MEDIUM, Source.stated("Cable", "bendRadius"));
    }

    @Override
    Optional<Outcome> outcome(Scene scene, CableNet net, LaidWire wire, RowDraft draft) {
        Bends.Tightest tightest = wire.shape() == null ? null : wire.shape().tightest();
        if (tightest == null) {
            return Optional.empty();
        }
        Cable cable = wire.cable();
        Integer radius = cable == null ? null : cable.bendRadius();
        if (radius == null) {
            return Optional.of(Outcome.missing("The bend radius of the cable of wire "
                    + wire.wire().id() + " is not known. Give bendRadius in its catalog entry."));
        }
        return Optional.of(Outcome.of(draft.place(Box.between(tightest.at(), tightest.at()))
                .mend(
                        "Give it more straight before or behind that corner: move the port away from it, or pin another way.")
                .atLeast(
                        radius / (double) Lengths.MM,
                        tightest.radius() / (double) Lengths.MM,
                        "mm",
                        wire.name() + " must not be bent tighter than " + Wording.mm(radius)
                                + "; its tightest corner has room for " + Wording.mm(tightest.radius()) + ".")));
    }

    @Override
    String idle() {
        return "No cable has a corner.";
    }
}
