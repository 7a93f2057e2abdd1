package org.shelterwright.app.desk.wires;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.Fill;
import org.shelterwright.layouts.cable.TrayUse;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.scene.Scene;

/**
 * How full a compartment of a tray is where it is fullest, and with what.
 *
 * @param tray with its compartment, such as "left tray, compartment 2"
 * @param name of the tray itself
 * @param filled share that is taken, such as "34.2 %"
 * @param most share that it may be filled to
 * @param use filled against most
 * @param wires ids of the wires there
 */
record TrayRow(String tray, String name, String filled, String most, double use, List<String> wires) {
    TrayRow {
        wires = List.copyOf(wires);
    }

    /** All compartments of trays, the fullest first. */
    static List<TrayRow> of(Scene scene) {
        Fill fill = CableLimits.fill(scene);
        List<TrayUse> uses = CableNet.of(scene).sheet().fullest(scene.body().trays());
        List<TrayRow> rows = new ArrayList<>();
        for (Tray tray : scene.body().trays()) {
            for (int part = 0; part < tray.parts().size(); part++) {
                String name = tray.name() + (tray.parts().size() > 1 ? ", compartment " + (part + 1) : "");
                TrayUse use = uses.stream()
                        .filter(one -> one.name().equals(name))
                        .findFirst()
                        .orElse(null);
                List<String> wires = use == null ? List.of() : use.wires();
                double share = use == null ? 0 : use.share();
                double most = fill.most(tray.closed(), wires.size());
                rows.add(new TrayRow(name, tray.name(), percent(share), percent(most), share / most, wires));
            }
        }
        rows.sort((a, b) -> Double.compare(b.use(), a.use()));
        return rows;
    }

    /** The row in one sentence, for a screen reader. */
    String sentence() {
        return tray + ", filled to " + filled + " of " + most
                + (wires.isEmpty() ? "." : " by " + String.join(", ", wires) + ".");
    }

    private static String percent(double share) {
        return Numerals.of(100 * share, 1) + " %";
    }
}
