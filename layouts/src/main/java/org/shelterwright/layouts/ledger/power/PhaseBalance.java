package org.shelterwright.layouts.ledger.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * The three phases of a supply bear nearly alike: {@code max |S_i − S_m| / S_m ≤ d}, with the mean S_m of the three apparent
 * powers at once. Supplies of one phase have nothing to balance.
 *
 * <p>Source: common practice; the figure is {@code power.phase-difference}.
 */
final class PhaseBalance extends PowerLimit {
    PhaseBalance() {
        super(
                "power.phase-balance",
                "Balance of phases",
                Severity.MEDIUM,
                Source.commonPractice("Phases bear nearly alike"),
                "No supply has three phases to balance.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        Optional<Rule> rule = scene.rules().rule(Figure.PHASE_DIFFERENCE);
        for (Supply supply : net.services().supplies()) {
            if (supply.lines() == 3) {
                rows.add(
                        rule.isEmpty()
                                ? UnsetFigure.row(rows, this, Figure.PHASE_DIFFERENCE)
                                : row(net, rows, supply, rule.get()));
            }
        }
    }

    private Row row(PowerNet net, Rows rows, Supply supply, Rule rule) {
        List<Measure> measures = new ArrayList<>();
        for (StateFlow state : net.flows()) {
            SupplyFlow flow = state.flow(supply);
            if (flow.live() && (flow.totalVA() > 0 || !flow.gaps().isEmpty())) {
                measures.add(measure(state, flow, rule.value()));
            }
        }
        return governed(
                rows.draft(this, "Phases of " + supply.name())
                        .units(units(supply.source()))
                        .source(rule.source()),
                measures,
                "share",
                1,
                "Put a unit of the fullest phase on the emptiest.",
                supply.name() + " bears nothing in any state.");
    }

    private static Measure measure(StateFlow state, SupplyFlow flow, double most) {
        double mean = flow.totalVA() / flow.peakVA().size();
        double off = 0;
        for (double va : flow.peakVA()) {
            off = Math.max(off, Math.abs(va - mean));
        }
        List<String> each = flow.peakVA().stream()
                .map(va -> Amounts.number(va / flow.supply().voltageV(), 1))
                .toList();
        return new Measure(
                state.state().name(),
                mean > 0 ? off / mean : 0,
                null,
                most,
                "The phases of " + flow.supply().name() + " bear " + String.join(", ", each)
                        + " A; the furthest is off the mean by",
                flow.gaps());
    }
}
