package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.Beside;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * No signal or radio-frequency cable runs along a power cable nearer than the separation for longer than the allowed length;
 * crossing at a right angle is free. A screened tray or a separator between them parts them.
 *
 * <p>Source: common practice (100 to 300 mm or a screen, crossing at 90°; from memory).
 */
final class Separation extends CableLimit {
    Separation() {
        super(
                "cables.separation",
                "Power beside signal",
                Severity.MEDIUM,
                Source.commonPractice("Power and signal 100 to 300 mm apart, or a screen between; crossing at 90°"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        OptionalDouble apart = scene.rules().value(Figure.CABLE_SEPARATION);
        OptionalDouble allowed = scene.rules().value(Figure.CABLE_PARALLEL);
        if (apart.isEmpty() || allowed.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, apart.isEmpty() ? Figure.CABLE_SEPARATION : Figure.CABLE_PARALLEL));
            return;
        }
        if (net.wires().stream().noneMatch(LaidWire::routed)) {
            rows.add(rows.draft(this).notAssessed("No wire has a route that could be judged. Route the wires first."));
            return;
        }
        Told told = new Told();
        for (Beside beside : net.sheet().besides()) {
            double lengthM = beside.length() / 1e6;
            double mostM = allowed.getAsDouble() / 1000;
            told.add(rows.draft(this, title() + ", " + beside.power() + " and " + beside.other())
                    .units(units(net, beside))
                    .place(beside.place())
                    .mend("Pin one of them by another way, or screen its tray.")
                    .atMost(
                            lengthM,
                            mostM,
                            "m",
                            "Power wire " + beside.power() + " runs within " + Amounts.number(apart.getAsDouble(), 0)
                                    + " mm along wire " + beside.other() + " over " + Amounts.number(lengthM, 2)
                                    + " m, where " + Amounts.number(mostM, 2) + " m are allowed."));
        }
        told.into(rows);
        if (told.isEmpty()) {
            rows.add(rows.draft(this)
                    .held("No signal cable runs along a power cable within " + Amounts.number(apart.getAsDouble(), 0)
                            + " mm."));
        }
    }

    private static List<String> units(CableNet net, Beside beside) {
        return Stream.of(beside.power(), beside.other())
                .flatMap(id -> net.wire(id).stream())
                .flatMap(wire -> wire.units().stream())
                .distinct()
                .toList();
    }
}
