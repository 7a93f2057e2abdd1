package org.shelterwright.layouts.ledger.cables;

import java.util.Optional;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/**
 * No cable is longer, with its spare and what lies outside, than the brief or its kind allows: {@code (L + 2 s)(1 + q) ≤ L_max}.
 *
 * <p>Source: the brief; of a kind of cable its data (a channel of balanced cable has 100 m, of which 90 m fixed, as quoted from
 * building cabling).
 */
final class RouteLength extends WireLimit {
    RouteLength() {
        super("cables.length", "Length of wire", Severity.MEDIUM, Source.stated("Brief", "longest"));
    }

    @Override
    Optional<Outcome> outcome(Scene scene, CableNet net, LaidWire wire, RowDraft draft) {
        Integer asked = wire.wire().longest();
        Cable cable = wire.cable();
        Integer ofKind = cable == null ? null : cable.longest();
        if (asked == null && ofKind == null) {
            return Optional.empty();
        }
        if (wire.cutLength() < 0) {
            return Optional.of(Outcome.missing("The length of wire "
                    + wire.wire().id() + " outside the body is not known. Give its \"outside\" in the brief."));
        }
        boolean byKind = asked == null || ofKind != null && ofKind < asked;
        int most = byKind && ofKind != null ? ofKind : asked == null ? 0 : asked;
        if (byKind && cable != null) {
            draft.source(cable.source());
        }
        double lengthM = wire.cutLength() / 1e6;
        double mostM = most / 1e6;
        double over = lengthM - mostM;
        return Optional.of(Outcome.of(draft.mend(
                        "Move the units at its ends nearer to each other or to a tray, or allow it more length.")
                .atMost(
                        lengthM,
                        mostM,
                        "m",
                        wire.name() + " takes " + Amounts.number(lengthM, 2) + " m with its spare, of "
                                + Amounts.number(mostM, 2) + " m: "
                                + (over > 0
                                        ? Amounts.number(over, 2) + " m too much."
                                        : Amounts.number(-over, 2) + " m are left."))));
    }

    @Override
    String idle() {
        return "No wire has a greatest length.";
    }
}
