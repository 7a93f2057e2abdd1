package org.shelterwright.layouts.ledger.transport.burden;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** A limit of what the wheels of a car bear. */
abstract class WagonLimit extends LegLimit {
    WagonLimit(String name, String title, Source source) {
        super(name, title, source, "No car on wheels of its own goes on this leg.");
    }

    @Override
    public final void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.outerLoads()) {
            if (load.car().wheels().isEmpty() || !binds(leg, load)) {
                continue;
            }
            RowDraft draft = draft(leg, rows, title() + ", " + load.name()).units(load.ids());
            String unknown = load.unknown().orElse(null);
            CarStatics statics = CarStatics.of(load).orElse(null);
            if (unknown != null) {
                rows.add(draft.notAssessed(unknown));
            } else if (statics == null) {
                rows.add(draft.notAssessed("The loads of " + load.car().wheels().size() + " wheel groups of the "
                        + load.car().name() + " are not determined by statics; two can be told."));
            } else {
                rows.add(row(leg, load, statics, draft));
            }
        }
    }

    /** Whether it binds a car at all. */
    boolean binds(LegScene leg, PlacedLoad load) {
        return load.car().kind().wagon();
    }

    abstract Row row(LegScene leg, PlacedLoad load, CarStatics statics, RowDraft draft);
}
