package org.shelterwright.layouts.ledger.transport.way;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.axles.AxleLimits;
import org.shelterwright.layouts.ledger.stability.StabilityLimits;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;

/**
 * What goes on its own wheels meets the limits of axles and stability of its layout under the rules of the leg. Source: those limits;
 * Directive 96/53/EC or 23 CFR 658 as the leg chooses.
 */
final class OnRoad extends LegLimit {
    private final List<Limit> limits;

    OnRoad() {
        super(
                "on-road",
                "On its own wheels",
                Source.quoted("Directive 96/53/EC, 23 CFR 658 and the ratings of the carrier", "axles and stability"),
                "Nothing goes on its own wheels on this leg.");
        List<Limit> all = new ArrayList<>(AxleLimits.all());
        all.addAll(StabilityLimits.all());
        limits = List.copyOf(all);
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (LegScene.Driven driven : leg.drives()) {
            Layout layout = driven.vehicle().layout();
            if (layout == null) {
                continue;
            }
            List<String> units = new ArrayList<>(List.of(driven.vehicle().id()));
            driven.trailer().ifPresent(trailer -> units.add(trailer.id()));
            rows.add(LayoutRows.told(
                    draft(leg, rows, "Axles and stability, " + driven.vehicle().name())
                            .units(units),
                    LayoutRows.of(leg, layout, limits, QuarterTurn.R0),
                    driven.vehicle().name()));
        }
    }
}
