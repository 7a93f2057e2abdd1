package org.shelterwright.layouts.ledger.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.SupplyPair;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.scene.Scene;

/**
 * Two units that must not share a supply do not draw from the same one. Supplies that are fed from the same one further up
 * are not the same.
 *
 * <p>Source: the brief.
 */
final class KeptApart extends PowerLimit {
    KeptApart() {
        super(
                "power.kept-apart",
                "Units that must not share a supply",
                Severity.HARD,
                Source.stated("Brief", "pairs that must not share a supply"),
                "The brief keeps no units apart.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        for (SupplyPair pair : net.services().apart()) {
            RowDraft draft = rows.draft(this).units(List.of(pair.a(), pair.b()));
            Consumer a = consumer(net, pair.a());
            Consumer b = consumer(net, pair.b());
            Supply ofA = a == null ? null : a.supply();
            Supply ofB = b == null ? null : b.supply();
            if (a != null && b != null && ofA != null && ofB != null) {
                String both = a.unit().name() + " and " + b.unit().name();
                rows.add(
                        ofA.id().equals(ofB.id())
                                ? draft.mend("Feed one of them from another supply.")
                                        .atMost(
                                                1,
                                                0,
                                                "",
                                                both + " both draw from " + ofA.name() + ", and must not: "
                                                        + pair.reason() + ".")
                                : draft.held(both + " draw from " + ofA.name() + " and " + ofB.name() + "."));
            } else {
                List<PowerGap> gaps = new ArrayList<>(Stream.of(a, b)
                        .filter(Objects::nonNull)
                        .map(Consumer::gap)
                        .filter(Objects::nonNull)
                        .toList());
                if (gaps.isEmpty()) {
                    gaps.add(new PowerGap(
                            a == null ? pair.a() : pair.b(),
                            "The unit " + (a == null ? pair.a() : pair.b())
                                    + " draws no power, and yet must not share a"
                                    + " supply. Correct the pair in the brief."));
                }
                rows.add(gap(draft, gaps));
            }
        }
    }

    private static @Nullable Consumer consumer(PowerNet net, String unit) {
        return net.consumers().stream()
                .filter(one -> one.unit().id().equals(unit))
                .findFirst()
                .orElse(null);
    }
}
