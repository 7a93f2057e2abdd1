package org.shelterwright.layouts.cable;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.item.Power.Nominal;
import org.shelterwright.layouts.brief.Duty;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.scene.Scene;

/**
 * Finds what each wire with power carries: what the brief says, else the rated current of the unit that draws at its end, else
 * the greatest current of the supply that comes from the unit at its end. It depends on no placement.
 */
final class WireDuties {
    private static final String BODY = "body";

    private final PowerNet net;
    private final Map<String, WireDuty> duties = new LinkedHashMap<>();

    private WireDuties(Scene scene) {
        this.net = PowerNet.of(scene);
        scene.brief().wires().forEach(wire -> duties.put(wire.id(), duty(wire)));
    }

    static WireDuty of(Scene scene, Wire wire) {
        WireDuty duty = scene.steady(WireDuties.class, WireDuties::new).duties.get(wire.id());
        return duty == null ? WireDuty.missing("The wire is not in the brief.") : duty;
    }

    private WireDuty duty(Wire wire) {
        WireDuty found = found(wire);
        Duty stated = wire.duty();
        if (stated == null) {
            return found;
        }
        Double voltageV = stated.voltageV();
        Double currentA = stated.currentA();
        Integer phases = stated.phases();
        if (found.gap() != null && (voltageV == null || currentA == null)) {
            return found;
        }
        return new WireDuty(
                voltageV == null ? found.voltageV() : voltageV,
                phases == null ? found.phases() : phases,
                currentA == null ? found.currentA() : currentA,
                currentA == null ? found.state() : "always",
                null);
    }

    private WireDuty found(Wire wire) {
        String from = WireEnd.owner(wire.from());
        String to = WireEnd.owner(wire.to());
        for (String unit : List.of(to, from)) {
            Optional<Consumer> consumer = net.consumers().stream()
                    .filter(one -> one.unit().id().equals(unit) && one.power() != null)
                    .findFirst();
            if (consumer.isPresent()) {
                return drawn(wire, consumer.get());
            }
        }
        for (String unit : List.of(from, to)) {
            for (Supply supply : net.services().supplies()) {
                boolean comesFrom =
                        unit.equals(supply.source()) || unit.equals(BODY) && supply.kind() == Supply.Kind.SHORE;
                if (comesFrom) {
                    return given(supply);
                }
            }
        }
        return WireDuty.missing("It is not known what wire " + wire.id()
                + " carries: no unit at its ends draws power or gives a supply. Give its \"duty\" in the brief.");
    }

    private WireDuty drawn(Wire wire, Consumer consumer) {
        Power power = consumer.power();
        Optional<Nominal> nominal = power == null ? Optional.empty() : power.nominal();
        if (power == null || nominal.isEmpty()) {
            return WireDuty.missing(
                    "The supply of " + consumer.unit().name() + " is not understood, so that the current of" + " wire "
                            + wire.id() + " is not known. Write it such as \"230 V ac\".");
        }
        Supply supply = consumer.supply();
        OptionalDouble factor = switch (nominal.get().current()) {
            case DC -> OptionalDouble.of(1);
            case AC -> {
                Double own = power.powerFactor();
                yield own != null
                        ? OptionalDouble.of(own)
                        : supply == null ? OptionalDouble.empty() : net.powerFactor(power, supply);
            }
        };
        if (factor.isEmpty()) {
            return WireDuty.missing(
                    "The power factor of " + consumer.unit().name() + " is not known, which the current of" + " wire "
                            + wire.id() + " needs. Give powerFactor in its item.");
        }
        boolean three = power.threePhase();
        double voltageV = nominal.get().voltageV() / (three ? Math.sqrt(3) : 1);
        double currentA = power.ratedW() / factor.getAsDouble() / voltageV / (three ? 3 : 1);
        return new WireDuty(voltageV, three ? 3 : 1, currentA, "always", null);
    }

    private WireDuty given(Supply supply) {
        double mostA = 0;
        String state = "always";
        for (StateFlow flow : net.flows()) {
            SupplyFlow at = flow.flow(supply);
            double currentA = at.live() ? at.currentA(at.fullestLine()) + at.chargeA() : 0;
            if (currentA > mostA) {
                mostA = currentA;
                state = flow.state().name();
            }
            if (at.live() && !at.gaps().isEmpty()) {
                return WireDuty.missing("The current of supply " + supply.name() + " is not known: "
                        + at.gaps().get(0).sentence());
            }
        }
        return new WireDuty(supply.voltageV(), supply.lines(), mostA, state, null);
    }
}
