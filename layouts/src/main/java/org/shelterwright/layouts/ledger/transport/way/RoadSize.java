package org.shelterwright.layouts.ledger.transport.way;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * What goes on its own wheels is no wider, higher or longer than the road allows; a train of vehicle and trailer is taken as long as both
 * together. Source: Directive 96/53/EC, annex I, 1.1 to 1.3: 2.55 m, 4.00 m, 12.00 m, 18.75 m (seen).
 */
final class RoadSize extends LegLimit {
    RoadSize() {
        super(
                "road-size",
                "Size on the road",
                Source.seen("Directive 96/53/EC, Annex I", "1.1 length, 1.2 width, 1.3 height"),
                "Nothing goes on its own wheels on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (LegScene.Driven driven : leg.drives()) {
            vehicle(leg, driven.vehicle(), rows);
            driven.trailer().ifPresent(trailer -> {
                vehicle(leg, trailer, rows);
                leg.outline()
                        .ifPresent(outline -> row(
                                leg,
                                List.of(driven.vehicle().id(), trailer.id()),
                                driven.vehicle().name() + " with " + trailer.name(),
                                "long",
                                driven.vehicle().size().x() + trailer.size().x(),
                                outline.combinationLength(),
                                outline,
                                rows));
            });
        }
    }

    private void vehicle(LegScene leg, Shape shape, Rows rows) {
        Outline outline = leg.outline().orElse(null);
        List<String> units = List.of(shape.id());
        if (outline == null) {
            rows.add(draft(leg, rows, title() + ", " + shape.name())
                    .units(units)
                    .notAssessed("The outline of " + leg.state() + " is not known. Give \"outline\" of leg "
                            + leg.leg().id() + "."));
            return;
        }
        row(leg, units, shape.name(), "wide", shape.size().y(), 2 * outline.widest(), outline, rows);
        row(leg, units, shape.name(), "high", shape.size().z(), outline.highest(), outline, rows);
        row(leg, units, shape.name(), "long", shape.size().x(), outline.length(), outline, rows);
    }

    private void row(
            LegScene leg,
            List<String> units,
            String name,
            String way,
            int size,
            @Nullable Integer allowed,
            Outline outline,
            Rows rows) {
        if (allowed == null) {
            return;
        }
        rows.add(draft(leg, rows, name + ", how " + way)
                .units(new ArrayList<>(units))
                .source(outline.source())
                .mend(size > allowed ? "Ask for a permit, or carry it by another way." : null)
                .atMost(
                        size / 1000.0,
                        allowed / 1000.0,
                        "mm",
                        name + " is " + Wording.mm(size) + " " + way + "; " + outline.name() + " allows "
                                + Wording.mm(allowed) + "."));
    }
}
