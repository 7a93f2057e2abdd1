package org.shelterwright.layouts.power;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Battery;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.rules.Figure;

/**
 * What a supply takes in from the one that feeds it: {@code P_in = P_out / η + P_standing}; passed on, {@code P_out +
 * P_standing}; charging a battery, {@code U_charge I / η} with {@code I = min(I_charger, I_load + I_battery)}, so at full
 * charging current.
 */
final class Conversion {
    private final PowerNet net;
    private final SupplyFlow fed;
    private final Supply feeder;
    private final @Nullable Converter converter;

    Conversion(PowerNet net, SupplyFlow fed, Supply feeder) {
        this.net = net;
        this.fed = fed;
        this.feeder = feeder;
        this.converter = net.converter(fed.supply()).orElse(null);
    }

    /** The unit that converts or charges; {@code null} if it is not stated. */
    static @Nullable String unit(Supply supply) {
        return supply.kind() == Kind.BATTERY ? supply.charger() : supply.source();
    }

    /** The flow with what it takes from its feeder, its losses, charging current and gaps. */
    SupplyFlow completed() {
        List<PowerGap> gaps = new ArrayList<>(fed.gaps());
        double lossW = 0;
        double chargeA = 0;
        if (converter == null) {
            gaps.add(new PowerGap(
                    unit(fed.supply()),
                    "The supply " + fed.supply().name() + " is fed from " + feeder.name()
                            + ", but no unit with a converter is stated for it. Give its "
                            + (fed.supply().kind() == Kind.BATTERY ? "charger." : "source.")));
        } else if (fed.supply().kind() == Kind.BATTERY) {
            Battery battery = net.battery(fed.supply()).orElse(null);
            if (battery == null || battery.chargeA() == null || converter.chargeA() == null) {
                gaps.add(new PowerGap(
                        unit(fed.supply()),
                        "The charging current of supply " + fed.supply().name()
                                + " is not known. Give chargeA in the items of its battery and of its charger."));
            } else {
                double loadA = fed.meanW() / fed.supply().voltageV();
                double currentA = Math.min(converter.chargeA(), loadA + battery.chargeA());
                chargeA = Math.max(0, currentA - loadA);
                lossW = battery.chargeVoltageV() * currentA * (1 / converter.efficiency() - 1);
            }
            lossW += standingW();
        } else {
            lossW = inW(fed.meanW()) - fed.meanW();
        }
        if (net.powerFactor(null, feeder).isEmpty()) {
            gaps.add(powerFactorGap(
                    unit(fed.supply()), "what feeds " + fed.supply().name()));
        }
        double takenW = inW(fed.totalW());
        double takenVA = fed.passes()
                ? fed.totalVA() + standingW()
                : takenW / net.powerFactor(null, feeder).orElse(1);
        boolean inside = net.inside(unit(fed.supply()));
        return new SupplyFlow(
                fed.supply(),
                fed.live(),
                feeder,
                fed.passes(),
                fed.draws(),
                fed.peakVA(),
                fed.peakW(),
                fed.meanW(),
                takenW,
                takenVA,
                inW(fed.meanW()),
                inside ? lossW : 0,
                chargeA,
                gaps);
    }

    static PowerGap powerFactorGap(@Nullable String unit, String what) {
        return new PowerGap(
                unit,
                "The power factor of " + what + " is not known. Give powerFactor in its item, or choose a rule set that"
                        + " sets " + Figure.POWER_FACTOR.id() + ".");
    }

    private double inW(double outW) {
        if (converter == null) {
            return outW;
        }
        double efficiency = converter.efficiency();
        Battery battery =
                fed.supply().kind() == Kind.BATTERY ? net.battery(fed.supply()).orElse(null) : null;
        if (battery != null && battery.chargeA() != null && converter.chargeA() != null) {
            double currentA = Math.min(converter.chargeA(), outW / fed.supply().voltageV() + battery.chargeA());
            return battery.chargeVoltageV() * currentA / efficiency + standingW();
        }
        return (fed.passes() ? outW : outW / efficiency) + standingW();
    }

    /** A unit that charges and converts stands by once: with what it converts. */
    private double standingW() {
        Converter one = converter;
        String unit = unit(fed.supply());
        boolean counted = fed.supply().kind() == Kind.BATTERY
                && net.services().supplies().stream()
                        .anyMatch(
                                other -> other.kind() == Kind.CONVERTER && unit != null && unit.equals(other.source()));
        return one == null || counted ? 0 : one.standingW();
    }
}
