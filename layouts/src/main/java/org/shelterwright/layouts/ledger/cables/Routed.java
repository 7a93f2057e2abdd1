package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every wire has a route that joins its ends: one run after another, along the axes, in the trays that it names. A wire without
 * one is not assessed: its length, drop, fill and mass are not known.
 *
 * <p>Source: the brief.
 */
final class Routed extends CableLimit {
    private static final String MEND = "Route the wires: shelterwright route FILE.";

    Routed() {
        super("cables.routed", "Routes of wires", Severity.MEDIUM, Source.stated("Brief", "wires"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        List<LaidWire> open =
                net.wires().stream().filter(wire -> !wire.routed()).toList();
        int all = net.wires().size();
        if (open.isEmpty()) {
            long laid = 0;
            for (LaidWire wire : net.wires()) {
                laid += wire.shape() == null ? 0 : wire.shape().length();
            }
            rows.add(rows.draft(this)
                    .countedAtLeast(
                            all,
                            all,
                            "",
                            "All " + Wording.count(all, "wire") + " have a route: " + Amounts.number(laid / 1e6, 1)
                                    + " m laid in the body."));
        } else if (open.size() == all && scene.layout().routes().isEmpty()) {
            rows.add(rows.draft(this)
                    .mend(MEND)
                    .notAssessed("None of the " + Wording.count(all, "wire")
                            + " has a route, so that lengths, fill, drop and the mass of cables are not known."));
        } else {
            for (LaidWire wire : open) {
                rows.add(rows.draft(this, title() + ", " + wire.wire().id())
                        .units(wire.units())
                        .place(wire.place())
                        .mend(MEND)
                        .notAssessed(wire.gap() == null ? "It has no route." : wire.gap()));
            }
        }
    }
}
