package org.shelterwright.layouts.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.power.Consumer.Use;

/**
 * Sums what flows in one state, from the units up to the sources: the load of a supply is {@code max(g ΣP, max P, Σ mean)}
 * on each line, with diversity g, and then what each supply that it feeds takes in, which is not reduced again. Apparent
 * powers are added as numbers, which is never less than their vector sum.
 */
final class FlowSum {
    private final PowerNet net;
    private final OperatingState state;
    private final Map<String, SupplyFlow> done = new HashMap<>();

    FlowSum(PowerNet net, OperatingState state) {
        this.net = net;
        this.state = state;
    }

    SupplyFlow flow(Supply supply) {
        SupplyFlow there = done.get(supply.id());
        if (there != null) {
            return there;
        }
        SupplyFlow made = sum(supply);
        done.put(supply.id(), made);
        return made;
    }

    private boolean live(Supply supply) {
        return supply.kind() == Kind.CONVERTER
                ? feeder(supply) != null
                : state.live().contains(supply.id());
    }

    private @Nullable Supply feeder(Supply supply) {
        return supply.fedFrom().stream()
                .flatMap(id -> net.services().supply(id).stream())
                .filter(this::live)
                .findFirst()
                .orElse(null);
    }

    private SupplyFlow sum(Supply supply) {
        boolean live = live(supply);
        Supply feeder = live ? feeder(supply) : null;
        List<PowerGap> gaps = new ArrayList<>(net.gapsOf(supply));
        List<Draw> draws = new ArrayList<>();
        for (Consumer consumer : net.consumers()) {
            Power power = consumer.power();
            Supply from = consumer.supply();
            if (power != null && from != null && from.id().equals(supply.id())) {
                draws.add(draw(consumer, power, live, gaps));
            }
        }
        Lines lines = new Lines(supply.lines());
        double meanW = atOnce(supply, draws, lines);
        for (Supply other : net.services().supplies()) {
            SupplyFlow fed = other.fedFrom().contains(supply.id()) ? flow(other) : null;
            Supply itsFeeder = fed == null ? null : fed.feeder();
            if (fed != null && itsFeeder != null && itsFeeder.id().equals(supply.id())) {
                lines.add(line(fed, supply, gaps), fed.takenW(), fed.takenVA());
                meanW += fed.takenMeanW();
                gaps.addAll(fed.gaps());
            }
        }
        SupplyFlow flow = new SupplyFlow(
                supply,
                live,
                feeder,
                passes(supply, feeder),
                draws,
                list(lines, true),
                list(lines, false),
                meanW,
                0,
                0,
                0,
                0,
                0,
                gaps);
        return feeder == null ? flow : new Conversion(net, flow, feeder).completed();
    }

    private Draw draw(Consumer consumer, Power power, boolean live, List<PowerGap> gaps) {
        Use use = live ? consumer.use(state) : Use.OFF;
        Double idleW = power.idleW();
        if (use == Use.IDLE && idleW == null) {
            gaps.add(new PowerGap(
                    consumer.unit().id(),
                    consumer.unit().name() + " is idle " + state.name() + ", and item "
                            + consumer.unit().item() + " has no idle power. Give idleW there."));
        }
        double idle = idleW == null ? power.ratedW() : idleW;
        double connectedW = use == Use.OFF ? 0 : use == Use.IDLE ? idle : power.ratedW();
        double duty = power.dutyShare() == null ? 1 : power.dutyShare();
        double meanW = use == Use.ON ? connectedW * duty : connectedW;
        double heatShare = power.heatW() == null ? 1 : power.heatW() / power.ratedW();
        Supply supply = consumer.supply();
        OptionalDouble factor = supply == null ? OptionalDouble.of(1) : net.powerFactor(power, supply);
        if (factor.isEmpty() && connectedW > 0) {
            gaps.add(Conversion.powerFactorGap(
                    consumer.unit().id(), consumer.unit().name()));
        }
        double connectedVA = connectedW / factor.orElse(1);
        return new Draw(
                consumer,
                use,
                connectedW,
                connectedVA,
                meanW,
                consumer.inside() ? meanW * heatShare : 0,
                line(consumer));
    }

    private static int line(Consumer consumer) {
        Supply supply = consumer.supply();
        Power power = consumer.power();
        Feed feed = consumer.feed();
        if (supply == null || supply.lines() == 1) {
            return 0;
        }
        Integer phase = feed == null || power == null || power.threePhase() ? null : feed.phase();
        return phase == null ? Draw.ALL_LINES : phase - 1;
    }

    /** The line of its feeder on which a converter hangs, or all of them. */
    private int line(SupplyFlow fed, Supply feeder, List<PowerGap> gaps) {
        if (feeder.lines() == 1) {
            return 0;
        }
        if (fed.supply().lines() == 3) {
            return Draw.ALL_LINES;
        }
        String unit = Conversion.unit(fed.supply());
        Integer phase =
                unit == null ? null : net.services().feed(unit).map(Feed::phase).orElse(null);
        if (phase == null) {
            gaps.add(new PowerGap(
                    unit,
                    "The supply " + fed.supply().name() + " is fed from one phase of " + feeder.name()
                            + ", and the brief does not say which. Give the phase in a feed of its unit."));
            return Draw.ALL_LINES;
        }
        return phase - 1;
    }

    /** Puts the units' load on the lines; returns its mean (W). */
    private double atOnce(Supply supply, List<Draw> draws, Lines lines) {
        double diversity = net.diversity(supply);
        double mean = 0;
        for (int line = 0; line < lines.count(); line++) {
            double sumW = 0;
            double sumVA = 0;
            double mostW = 0;
            double mostVA = 0;
            double meanW = 0;
            double meanVA = 0;
            for (Draw draw : draws) {
                double share = draw.line() == line ? 1 : draw.line() == Draw.ALL_LINES ? 1.0 / lines.count() : 0;
                sumW += share * draw.connectedW();
                sumVA += share * draw.connectedVA();
                mostW = Math.max(mostW, share * draw.connectedW());
                mostVA = Math.max(mostVA, share * draw.connectedVA());
                meanW += share * draw.meanW();
                meanVA += draw.connectedW() > 0 ? share * draw.meanW() * draw.connectedVA() / draw.connectedW() : 0;
            }
            lines.add(
                    line,
                    Math.max(diversity * sumW, Math.max(mostW, meanW)),
                    Math.max(diversity * sumVA, Math.max(mostVA, meanVA)));
            mean += meanW;
        }
        return mean;
    }

    /** A converter passes on what it need not convert, if it can. */
    private boolean passes(Supply supply, @Nullable Supply feeder) {
        Converter converter = net.converter(supply).orElse(null);
        return feeder != null
                && supply.kind() == Kind.CONVERTER
                && converter != null
                && converter.passA() != null
                && feeder.current() == supply.current()
                && feeder.voltageV() == supply.voltageV();
    }

    private static List<Double> list(Lines lines, boolean apparent) {
        List<Double> list = new ArrayList<>();
        for (int i = 0; i < lines.count(); i++) {
            list.add(apparent ? lines.va(i) : lines.w(i));
        }
        return list;
    }
}
