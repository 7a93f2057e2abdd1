package org.shelterwright.layouts.ledger.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Battery;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Generator;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * A supply stands the start of its unit with the greatest inrush while all others run: {@code I_line − I_unit + I_inrush ≤
 * I_start}. I_start is {@code S_start / U} of a generator or converter, the peak current of a battery, and for a breaker its
 * rating times {@code power.start-factor}. Units start one after the other.
 *
 * <p>Source: tripping of breakers after IEC 60898-1 (from memory); the peaks of generators, converters and batteries are data.
 */
final class StartCurrent extends PowerLimit {
    StartCurrent() {
        super(
                "power.start-current",
                "Start current",
                Severity.MEDIUM,
                Source.fromMemory("IEC 60898-1", "instant tripping"),
                "Every unit can start.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        for (Supply supply : net.services().supplies()) {
            List<Measure> measures = new ArrayList<>();
            for (StateFlow state : net.flows()) {
                SupplyFlow flow = state.flow(supply);
                if (flow.live()) {
                    worst(scene, net, state, flow).ifPresent(measures::add);
                }
            }
            rows.add(governed(
                    rows.draft(this, "Start on " + supply.name()).units(units(supply.source())),
                    measures,
                    "A",
                    1,
                    "Switch it on before the others, limit its inrush, or choose a source with a higher peak.",
                    "Nothing starts on " + supply.name() + "."));
        }
    }

    private static Optional<Measure> worst(Scene scene, PowerNet net, StateFlow state, SupplyFlow flow) {
        List<Measure> measures = new ArrayList<>();
        Double capacity = capacityA(scene, net, flow);
        for (Draw draw : state.starting(flow.supply())) {
            Power power = draw.consumer().power();
            Double inrushA = power == null ? null : power.inrushA();
            List<PowerGap> gaps = new ArrayList<>(flow.gaps());
            if (inrushA == null) {
                gaps.add(
                        0,
                        new PowerGap(
                                draw.consumer().unit().id(),
                                "The inrush of " + draw.consumer().unit().name()
                                        + " is not known. Give inrushA in item "
                                        + draw.consumer().unit().item() + "."));
            }
            if (capacity == null) {
                gaps.add(
                        0,
                        new PowerGap(
                                flow.supply().source(),
                                "What " + flow.supply().name() + " gives while something starts is not known. Give "
                                        + datum(flow) + "."));
            }
            int line = flow.supply().lines() == 1 || draw.line() < 0 ? flow.fullestLine() : draw.line();
            double running = draw.connectedVA()
                    / flow.supply().voltageV()
                    / (draw.line() < 0 ? flow.supply().lines() : 1);
            double others = Math.max(0, flow.currentA(line) - running);
            measures.add(new Measure(
                    state.state().name(),
                    others + (inrushA == null ? running : inrushA),
                    null,
                    capacity,
                    "When " + draw.consumer().unit().name() + " starts, "
                            + flow.supply().name() + " gives",
                    gaps));
        }
        return Measure.governing(measures);
    }

    private static String datum(SupplyFlow flow) {
        return switch (flow.supply().kind()) {
            case GENERATOR -> "startVA in the item of its generator";
            case CONVERTER -> flow.passes() ? "its ratingA in the brief" : "peakVA in the item of its converter";
            case BATTERY -> "peakA in the item of its battery";
            case SHORE -> "its ratingA in the brief";
        };
    }

    private static @Nullable Double capacityA(Scene scene, PowerNet net, SupplyFlow flow) {
        Supply supply = flow.supply();
        double lineV = supply.voltageV() * supply.lines();
        return switch (supply.kind()) {
            case GENERATOR -> over(net.generator(supply).map(Generator::startVA).orElse(null), lineV);
            case BATTERY -> net.battery(supply).map(Battery::peakA).orElse(null);
            case CONVERTER ->
                flow.passes()
                        ? breaker(scene, net.ratingA(flow))
                        : over(net.converter(supply).map(Converter::peakVA).orElse(null), lineV);
            case SHORE -> breaker(scene, supply.ratingA());
        };
    }

    private static @Nullable Double over(@Nullable Double peakVA, double volts) {
        return peakVA == null ? null : Double.valueOf(peakVA / volts);
    }

    private static @Nullable Double breaker(Scene scene, @Nullable Double ratingA) {
        return ratingA == null ? null : Double.valueOf(ratingA * scene.rules().valueOr(Figure.START_FACTOR, 1));
    }
}
