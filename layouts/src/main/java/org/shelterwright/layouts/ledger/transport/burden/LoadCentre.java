package org.shelterwright.layouts.ledger.transport.burden;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * The centre of mass of what is in a container or hold lies near the middle, along and across. Source: CTU Code, annex 7, 3.1 (load
 * spread evenly); the shares are editable figures, from memory.
 */
final class LoadCentre extends LegLimit {
    LoadCentre() {
        super(
                "load-centre",
                "Centre of the load",
                Source.fromMemory("CTU Code, annex 7", "3.1: centre of gravity near the middle"),
                "No container or hold goes on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            TransitCar.Kind kind = load.car().kind();
            if ((kind == TransitCar.Kind.CONTAINER || kind == TransitCar.Kind.HOLD)
                    && !load.pieces().isEmpty()) {
                assess(leg, load, true, rows);
                assess(leg, load, false, rows);
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, boolean along, Rows rows) {
        Figure figure = along ? Figure.LOAD_OFF_ALONG : Figure.LOAD_OFF_ACROSS;
        Rule rule = leg.rules().rule(figure).orElse(null);
        RowDraft draft = draft(leg, rows, "Centre " + (along ? "along" : "across") + ", " + load.name())
                .units(load.ids());
        if (rule == null) {
            rows.add(unset(draft, figure));
            return;
        }
        draft.source(rule.source());
        String unknown = load.unknown().orElse(null);
        if (unknown != null || load.massKg() <= 0) {
            rows.add(draft.notAssessed(unknown == null ? "The load of " + load.name() + " weighs nothing." : unknown));
            return;
        }
        double extent = along ? load.car().deck().length() : load.car().deck().width();
        double off = (along ? load.momentX() : load.momentY()) / load.massKg() - extent / 2;
        double share = Math.abs(off) / extent;
        String way = along ? off > 0 ? "before" : "behind" : off > 0 ? "left of" : "right of";
        rows.add(draft.mend(share > rule.value() ? "Move heavy things to the other side of the middle." : null)
                .atMost(
                        share,
                        rule.value(),
                        "share",
                        "The centre of the load of " + load.name() + " lies " + Amounts.mm(Math.abs(off) / Lengths.M)
                                + " " + way + " the middle."));
    }
}
