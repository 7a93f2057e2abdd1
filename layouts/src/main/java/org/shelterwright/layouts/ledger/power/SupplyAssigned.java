package org.shelterwright.layouts.ledger.power;

import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every unit that draws power has one supply, and that has the voltage and current that the unit takes. One row for each unit
 * of which that is not known or not so.
 *
 * <p>Source: the brief; the data of the item.
 */
final class SupplyAssigned extends PowerLimit {
    SupplyAssigned() {
        super(
                "power.assigned",
                "Supply of each unit",
                Severity.HARD,
                Source.stated("Brief", "feeds and supplies"),
                "Every unit that draws power has a supply that fits it.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        int right = 0;
        for (Consumer consumer : net.consumers()) {
            PowerGap gap = consumer.gap();
            Power power = consumer.power();
            Supply supply = consumer.supply();
            var draft = rows.draft(this).units(units(consumer.unit().id()));
            if (gap != null) {
                rows.add(draft.notAssessed(gap.sentence()));
            } else if (power != null && power.nominal().isEmpty()) {
                rows.add(draft.notAssessed("The supply \"" + power.supply() + "\" of item "
                        + consumer.unit().item()
                        + " is not understood. Write it with voltage and current, such as \"230 V ac\"."));
            } else if (power != null && supply != null && !PowerNet.fits(power, supply)) {
                rows.add(draft.mend("Feed it from a supply of " + power.supply() + ", or put a converter between.")
                        .atMost(
                                1,
                                0,
                                "",
                                consumer.unit().name() + " takes " + power.supply()
                                        + (power.threePhase() ? " in three phases" : "") + ", and " + supply.name()
                                        + " does not give that."));
            } else {
                right++;
            }
        }
        if (right == net.consumers().size()) {
            rows.add(rows.draft(this)
                    .held(Wording.count(right, "unit") + " that draw power have a supply that fits them."));
        }
    }
}
