package org.shelterwright.layouts.ledger.power;

import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.item.Battery;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.power.Peukert;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * A battery lasts as long as each state in which nothing charges it: {@code t = u H (a C / (I H))^k ≥ t_state}, with the mean
 * current I at nominal voltage, usable share u, share a that an aged battery still has ({@code power.battery-ageing}), and
 * {@link Peukert}.
 *
 * <p>Source: Peukert's law; ageing after IEEE 485 (from memory).
 */
final class BatteryEndurance extends PowerLimit {
    BatteryEndurance() {
        super(
                "power.endurance",
                "Endurance of a battery",
                Severity.MEDIUM,
                Source.fromMemory("Peukert's law", "W. Peukert, Elektrotechnische Zeitschrift 20 (1897)"),
                "No battery is asked for.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        for (Supply supply : net.services().supplies()) {
            if (supply.kind() == Supply.Kind.BATTERY) {
                assess(scene, net, supply, rows);
            }
        }
    }

    private void assess(Scene scene, PowerNet net, Supply supply, Rows rows) {
        RowDraft draft = rows.draft(this, "Endurance of " + supply.name()).units(units(supply.source()));
        Battery battery = net.battery(supply).orElse(null);
        List<StateFlow> without = net.flows().stream()
                .filter(state -> state.flow(supply).discharging())
                .toList();
        if (battery == null) {
            rows.add(draft.notAssessed(
                    "The supply " + supply.name() + " names no unit with a battery. Give its source in"
                            + " the brief, and \"plant\" in the item of that unit."));
            return;
        }
        for (StateFlow state : without) {
            SupplyFlow flow = state.flow(supply);
            draft.state(state.state().name());
            if (!flow.gaps().isEmpty()) {
                rows.add(gap(draft, flow.gaps()));
                return;
            }
            if (state.state().hours() == null) {
                rows.add(draft.notAssessed("How long the battery of " + supply.name() + " must last "
                        + state.state().name() + " is not stated. Give the hours of that state."));
                return;
            }
        }
        without.stream()
                .filter(state -> state.flow(supply).meanW() > 0)
                .max(Comparator.comparingDouble(state -> needed(state) / hours(scene, battery, state, supply)))
                .ifPresentOrElse(
                        state -> rows.add(row(scene, battery, state, supply, draft)),
                        () -> rows.add(draft.state("always")
                                .held("Nothing draws on " + supply.name() + " while nothing charges it.")));
    }

    private static Row row(Scene scene, Battery battery, StateFlow state, Supply supply, RowDraft draft) {
        double needed = needed(state);
        double there = hours(scene, battery, state, supply);
        double currentA = currentA(state, supply);
        if (needed > there) {
            draft.mend("State what is idle or off " + state.state().name() + ", or choose a battery with about "
                    + Amounts.number(Math.ceil(Peukert.capacityAh(battery, ageing(scene), currentA, needed)), 0)
                    + " Ah.");
        }
        return draft.state(state.state().name())
                .atLeast(
                        needed,
                        there,
                        "h",
                        supply.name() + " gives " + Amounts.number(currentA, 1) + " A for " + Amounts.number(there, 2)
                                + " h, and must for " + Amounts.number(needed, 2) + " h: "
                                + Amounts.number(Math.abs(there - needed), 2) + " h "
                                + (needed > there ? "too little." : "more than needed."));
    }

    static double needed(StateFlow state) {
        Double hours = state.state().hours();
        return hours == null ? 0 : hours;
    }

    private static double hours(Scene scene, Battery battery, StateFlow state, Supply supply) {
        return Peukert.hours(battery, ageing(scene), currentA(state, supply));
    }

    private static double currentA(StateFlow state, Supply supply) {
        return state.flow(supply).meanW() / supply.voltageV();
    }

    private static double ageing(Scene scene) {
        return scene.rules().valueOr(Figure.BATTERY_AGEING, 1);
    }
}
