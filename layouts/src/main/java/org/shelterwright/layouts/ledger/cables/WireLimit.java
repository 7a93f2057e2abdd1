package org.shelterwright.layouts.ledger.cables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * A limit of each routed wire by itself: a row for each that is not met, and one for the tightest that is. Wires without a route
 * are the matter of {@link Routed}; if there is no other, nothing can be told.
 */
abstract class WireLimit extends CableLimit {
    WireLimit(String id, String title, Severity severity, Source source) {
        super(id, title, severity, source);
    }

    /**
     * What a wire comes to.
     *
     * @param gap what is missing and where to give it; {@code null} if there is a row
     */
    record Outcome(@Nullable Row row, @Nullable String gap) {
        static Outcome of(Row row) {
            return new Outcome(row, null);
        }

        static Outcome missing(String gap) {
            return new Outcome(null, gap);
        }
    }

    /** What a routed wire comes to; empty if the limit does not concern it. */
    abstract Optional<Outcome> outcome(Scene scene, CableNet net, LaidWire wire, RowDraft draft);

    /** What is said when the limit concerns no wire. */
    abstract String idle();

    @Override
    final void assess(Scene scene, CableNet net, Rows rows) {
        Told told = new Told();
        List<LaidWire> open = new ArrayList<>();
        List<String> gaps = new ArrayList<>();
        boolean any = false;
        for (LaidWire wire : net.wires()) {
            if (!wire.routed()) {
                continue;
            }
            any = true;
            RowDraft draft = rows.draft(this, title() + ", " + wire.wire().id())
                    .units(wire.units())
                    .place(wire.place());
            outcome(scene, net, wire, draft).ifPresent(outcome -> {
                Row row = outcome.row();
                String gap = outcome.gap();
                if (row != null) {
                    told.add(row);
                } else if (gap != null) {
                    open.add(wire);
                    gaps.add(gap);
                }
            });
        }
        told.into(rows);
        if (!gaps.isEmpty()) {
            String more = gaps.size() > 1 ? " (and " + Wording.count(gaps.size() - 1, "wire") + " more)" : "";
            rows.add(rows.draft(this)
                    .units(open.stream()
                            .flatMap(wire -> wire.units().stream())
                            .distinct()
                            .toList())
                    .notAssessed(gaps.get(0) + more));
        } else if (!any) {
            rows.add(rows.draft(this).notAssessed("No wire has a route that could be judged. Route the wires first."));
        } else if (told.isEmpty()) {
            rows.add(rows.draft(this).doesNotApply(idle()));
        }
    }
}
