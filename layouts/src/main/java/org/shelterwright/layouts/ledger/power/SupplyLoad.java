package org.shelterwright.layouts.ledger.power;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.scene.Scene;

/**
 * No line of a supply bears more current than it may: {@code I = max(g ΣS, max S, Σ S_mean) / U + fed supplies ≤ I_r}, with
 * diversity g, apparent power S of each unit that is on, and the least of breaker, converter and generator as I_r. The line
 * that bears most, in the state that is worst, governs.
 *
 * <p>Source: common practice of load schedules; diversity as in IEC 60364-1, 311 (from memory).
 */
final class SupplyLoad extends PowerLimit {
    SupplyLoad() {
        super(
                "power.supply-load",
                "Load of a supply",
                Severity.HARD,
                Source.fromMemory("IEC 60364-1", "311, greatest demand and diversity"),
                "No supply bears more than it may.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        for (Supply supply : net.services().supplies()) {
            List<Measure> measures = new ArrayList<>();
            for (StateFlow state : net.flows()) {
                SupplyFlow flow = state.flow(supply);
                if (flow.live()) {
                    measures.add(measure(net, state, flow));
                }
            }
            rows.add(governed(
                    rows.draft(this, "Load of " + supply.name()).units(units(supply.source())),
                    measures,
                    "A",
                    1,
                    "Put a unit on another supply or phase, state in which states it is idle or off, or choose a supply with"
                            + " a higher rating.",
                    supply.name() + " is not live in any state."));
        }
    }

    private static Measure measure(PowerNet net, StateFlow state, SupplyFlow flow) {
        Supply supply = flow.supply();
        int line = flow.fullestLine();
        List<PowerGap> gaps = new ArrayList<>(flow.gaps());
        Double capacity = net.ratingA(flow);
        if (capacity == null) {
            gaps.add(
                    0,
                    new PowerGap(
                            supply.source(),
                            "The supply " + supply.name() + " has no rating. Give its ratingA in the brief."));
        }
        String where = supply.lines() == 1 ? supply.name() : "L" + (line + 1) + " of " + supply.name();
        double meanA = flow.meanW() / supply.voltageV() / supply.lines();
        return new Measure(
                state.state().name(),
                flow.currentA(line),
                Math.min(meanA, flow.currentA(line)),
                capacity,
                where + " bears",
                gaps);
    }
}
