package org.shelterwright.layouts.ledger.power;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.scene.Scene;

/** A limit of power. Where no unit draws any, it holds; where the brief states no supplies or states, it cannot be told. */
abstract class PowerLimit extends NamedLimit implements Limit.OfBrief {
    PowerLimit(String id, String title, Severity severity, Source source, String heldSentence) {
        super(id, Subject.POWER, title, severity, source, heldSentence);
    }

    @Override
    public final void assess(Scene scene, Rows rows) {
        PowerNet net = PowerNet.of(scene);
        if (net.consumers().isEmpty()) {
            rows.add(rows.draft(this).held("No unit draws power."));
        } else if (net.services().supplies().isEmpty() || net.flows().isEmpty()) {
            rows.add(rows.draft(this)
                    .notAssessed(Wording.count(net.consumers().size(), "unit")
                            + " may draw power, and the brief states no "
                            + (net.services().supplies().isEmpty() ? "supplies" : "operating states")
                            + ". Give them in its services."));
        } else {
            assess(scene, net, rows);
        }
    }

    abstract void assess(Scene scene, PowerNet net, Rows rows);

    /** The row of the state that governs; held if none asks for anything. */
    static Row governed(RowDraft draft, List<Measure> states, String unit, int decimals, String mend, String held) {
        return Measure.governing(states)
                .map(worst -> worst.atMost(draft, unit, decimals, mend))
                .orElseGet(() -> draft.held(held));
    }

    /** A row for what cannot be told: the first gap in full, and how many more there are. */
    static Row gap(RowDraft draft, List<PowerGap> gaps) {
        List<PowerGap> each = gaps.stream().distinct().toList();
        String more = each.size() > 1 ? " (and " + Wording.count(each.size() - 1, "gap") + " more)" : "";
        return draft.units(each.stream()
                        .map(PowerGap::unit)
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList())
                .notAssessed(each.get(0).sentence() + more);
    }

    static List<String> units(@Nullable String unit) {
        return unit == null ? List.of() : List.of(unit);
    }
}
