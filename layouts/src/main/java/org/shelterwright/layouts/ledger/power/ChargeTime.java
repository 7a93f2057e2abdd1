package org.shelterwright.layouts.ledger.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * What the longest state without charging takes out of a battery is back in time: {@code f I t / I_charge ≤ T}, with charge
 * factor f, mean current I over the hours t of that state, and the charging current left beside the loads in the state that
 * charges least.
 *
 * <p>Source: common practice; figures {@code power.charge-factor} and {@code power.charge-hours}.
 */
final class ChargeTime extends PowerLimit {
    ChargeTime() {
        super(
                "power.charge-time",
                "Charge time of a battery",
                Severity.MEDIUM,
                Source.commonPractice("Charge put back over the charging current that is left"),
                "No battery is asked for.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        Optional<Rule> most = scene.rules().rule(Figure.CHARGE_HOURS);
        for (Supply supply : net.services().supplies()) {
            if (supply.kind() == Supply.Kind.BATTERY) {
                RowDraft draft =
                        rows.draft(this, "Charge time of " + supply.name()).units(units(supply.source()));
                if (most.isEmpty()) {
                    rows.add(UnsetFigure.row(rows, this, Figure.CHARGE_HOURS));
                } else {
                    assess(scene, net, supply, most.get(), draft, rows);
                }
            }
        }
    }

    private static void assess(Scene scene, PowerNet net, Supply supply, Rule most, RowDraft draft, Rows rows) {
        double takenAh = 0;
        List<Measure> measures = new ArrayList<>();
        List<PowerGap> gaps = new ArrayList<>();
        for (StateFlow state : net.flows()) {
            SupplyFlow flow = state.flow(supply);
            if (flow.discharging()) {
                gaps.addAll(flow.gaps());
                if (state.state().hours() == null) {
                    gaps.add(new PowerGap(
                            supply.source(),
                            "How long nothing charges " + supply.name() + " "
                                    + state.state().name() + " is not stated. Give the hours of that state."));
                }
                takenAh = Math.max(takenAh, BatteryEndurance.needed(state) * flow.meanW() / supply.voltageV());
            }
        }
        double factor = scene.rules().valueOr(Figure.CHARGE_FACTOR, 1);
        for (StateFlow state : net.flows()) {
            SupplyFlow flow = state.flow(supply);
            if (flow.live() && flow.feeder() != null) {
                List<PowerGap> all = new ArrayList<>(gaps);
                all.addAll(flow.gaps());
                boolean charges = flow.chargeA() > 0;
                measures.add(new Measure(
                        state.state().name(),
                        charges ? factor * takenAh / flow.chargeA() : takenAh > 0 && all.isEmpty() ? 1000 : 0,
                        null,
                        most.value(),
                        charges
                                ? "Charged with " + Amounts.number(flow.chargeA(), 1) + " A, " + supply.name()
                                        + " has its " + Amounts.number(takenAh, 0) + " Ah back after"
                                : "The loads of " + supply.name() + " leave no current to charge it; it is full after",
                        all));
            }
        }
        draft.source(most.source());
        Optional<Measure> governing = Measure.governing(measures);
        if (governing.isPresent()) {
            rows.add(governing.get().atMost(draft, "h", 1, "Choose a charger with more current, or switch loads off."));
        } else if (takenAh > 0) {
            rows.add(draft.notAssessed("No state charges " + supply.name() + ". State from which supply it is charged"
                    + " (fedFrom, charger), and a state in which that is live."));
        } else {
            rows.add(draft.held("Nothing is taken out of " + supply.name() + "."));
        }
    }
}
