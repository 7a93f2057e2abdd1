package org.shelterwright.layouts.ledger.cables;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.scene.Scene;

/**
 * The cable of every wire has the class of the ports at its ends, and its ends can be fitted to their connectors. It is judged
 * before wires are routed, where the brief names the cable.
 *
 * <p>Source: data of the items and cables.
 */
final class ConnectorFit extends CableLimit {
    ConnectorFit() {
        super("cables.connectors", "Connectors", Severity.MEDIUM, Source.stated("Items and cables", "connectors"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        boolean right = true;
        for (LaidWire wire : net.wires()) {
            Cable cable = wire.cable();
            String type = wire.wire().type();
            if (cable == null) {
                right = false;
                rows.add(rows.draft(this, title() + ", " + wire.wire().id())
                        .units(wire.units())
                        .notAssessed(
                                type == null
                                        ? "The cable of wire " + wire.wire().id()
                                                + " is not chosen yet. Route the wires."
                                        : "The cable \"" + type + "\" of wire "
                                                + wire.wire().id()
                                                + " is not in the catalog. Name one of: shelterwright catalog list --kind"
                                                + " cable."));
                continue;
            }
            right &= end(wire, cable, wire.from(), rows);
            right &= end(wire, cable, wire.to(), rows);
        }
        if (right) {
            rows.add(rows.draft(this).held("Every cable fits the ports at its ends."));
        }
    }

    private boolean end(LaidWire wire, Cable cable, @Nullable WireEnd end, Rows rows) {
        Port port = end == null ? null : end.port();
        if (end == null || port == null) {
            return true;
        }
        String what = null;
        if (port.cableClass() != cable.cableClass()) {
            what = end.name() + " takes " + TrayClass.word(port.cableClass()) + " cables, but wire "
                    + wire.wire().id() + " is of " + cable.name() + ", a " + TrayClass.word(cable.cableClass())
                    + " cable.";
        } else if (!cable.connectors().contains(port.connector())) {
            what = end.name() + " has the connector " + port.connector() + ", which cannot be fitted to " + cable.name()
                    + " of wire " + wire.wire().id() + ".";
        }
        if (what != null) {
            rows.add(rows.draft(this, title() + ", " + wire.wire().id())
                    .units(wire.units())
                    .place(wire.place())
                    .mend("Choose another cable, or put an adapter between and give it as a unit.")
                    .atMost(1, 0, "", what));
        }
        return what == null;
    }
}
