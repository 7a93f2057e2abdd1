package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * No more cables pass an entry panel than it has places, and only such of its classes.
 *
 * <p>Source: the body.
 */
final class PanelPlaces extends CableLimit {
    PanelPlaces() {
        super("cables.panel", "Places of entry panel", Severity.MEDIUM, Source.stated("Body", "entry panels"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        boolean used = false;
        for (EntryPanel panel : scene.body().entryPanels()) {
            List<LaidWire> through = net.wires().stream()
                    .filter(wire -> wire.panel().filter(panel.name()::equals).isPresent())
                    .toList();
            if (through.isEmpty()) {
                continue;
            }
            used = true;
            List<String> units = through.stream()
                    .flatMap(wire -> wire.units().stream())
                    .distinct()
                    .toList();
            rows.add(rows.draft(this, title() + ", " + panel.name())
                    .units(units)
                    .place(panel.area())
                    .mend("Take a cable in by another panel, or give it more places.")
                    .atMost(
                            through.size(),
                            panel.places(),
                            "",
                            "The " + panel.name() + " has " + Wording.count(panel.places(), "place") + " for "
                                    + Wording.count(through.size(), "cable") + "."));
            for (LaidWire wire : through) {
                Cable cable = wire.cable();
                if (cable != null && !panel.takes(cable.cableClass())) {
                    rows.add(rows.draft(this, title() + ", " + wire.wire().id())
                            .units(wire.units())
                            .place(panel.area())
                            .mend("Take it in by another panel.")
                            .atMost(
                                    1,
                                    0,
                                    "",
                                    wire.name() + " is a " + TrayClass.word(cable.cableClass()) + " cable, and the "
                                            + panel.name() + " does not take such."));
                }
            }
        }
        if (!used) {
            boolean waiting = net.wires().stream().anyMatch(wire -> !wire.routed() && wire.goesOutside());
            rows.add(
                    waiting
                            ? rows.draft(this)
                                    .notAssessed("No wire that goes outside has a route yet. Route the wires first.")
                            : rows.draft(this).doesNotApply("No wire goes through an entry panel."));
        }
    }
}
