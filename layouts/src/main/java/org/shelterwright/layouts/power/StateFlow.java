package org.shelterwright.layouts.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Supply;

/** What flows in one operating state, supply by supply. */
public final class StateFlow {
    private final OperatingState state;
    private final Map<String, SupplyFlow> flows;

    private StateFlow(OperatingState state, Map<String, SupplyFlow> flows) {
        this.state = state;
        this.flows = flows;
    }

    static StateFlow of(PowerNet net, OperatingState state) {
        Map<String, SupplyFlow> flows = new LinkedHashMap<>();
        FlowSum sum = new FlowSum(net, state);
        for (Supply supply : net.services().supplies()) {
            flows.put(supply.id(), sum.flow(supply));
        }
        return new StateFlow(state, flows);
    }

    public OperatingState state() {
        return state;
    }

    /** In the order of the brief. */
    public List<SupplyFlow> flows() {
        return List.copyOf(flows.values());
    }

    public SupplyFlow flow(Supply supply) {
        SupplyFlow flow = flows.get(supply.id());
        if (flow == null) {
            throw new IllegalArgumentException("The state knows no supply \"" + supply.id() + "\".");
        }
        return flow;
    }

    /** What a unit draws; empty if its supply is not known. */
    public Optional<Draw> draw(String unit) {
        return flows.values().stream()
                .flatMap(flow -> flow.draws().stream())
                .filter(draw -> draw.consumer().unit().id().equals(unit))
                .findFirst();
    }

    /** The units that start through a supply: its own, and those behind a converter that passes their current on. */
    public List<Draw> starting(Supply supply) {
        List<Draw> starting =
                new ArrayList<>(flow(supply).draws().stream().filter(Draw::on).toList());
        for (SupplyFlow flow : flows.values()) {
            Supply feeder = flow.feeder();
            if (feeder != null && flow.passes() && feeder.id().equals(supply.id())) {
                starting.addAll(starting(flow.supply()));
            }
        }
        return starting;
    }

    /** Whether a supply is live, by its id; what is not known is not. */
    boolean live(@Nullable String id) {
        SupplyFlow flow = id == null ? null : flows.get(id);
        return flow != null && flow.live();
    }
}
