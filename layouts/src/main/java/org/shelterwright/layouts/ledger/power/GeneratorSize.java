package org.shelterwright.layouts.ledger.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Generator;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * A generator is large enough where it works: {@code S ≤ S_r d (1 − r)} and {@code P ≤ P_r d (1 − r)}, with reserve r and
 * {@code d = (1 − a (h − h0)/100) (1 − b (T − T0))} for altitude h and air temperature T above those of reference. The
 * tighter of both, in the worst state, makes the row.
 *
 * <p>Source: the losses are data of the generator (3 % for each 500 m above 1000 m and for each 5 K above 40 °C, multiplied,
 * are common practice); ISO 3046-1 has the method for engines (from memory).
 */
final class GeneratorSize extends PowerLimit {
    GeneratorSize() {
        super(
                "power.generator",
                "Size of the generator",
                Severity.HARD,
                Source.stated("Catalog", "rating and derating of the generator"),
                "No generator is asked for.");
    }

    @Override
    void assess(Scene scene, PowerNet net, Rows rows) {
        for (Supply supply : net.services().supplies()) {
            if (supply.kind() == Supply.Kind.GENERATOR) {
                assess(scene, net, supply, rows);
            }
        }
    }

    private void assess(Scene scene, PowerNet net, Supply supply, Rows rows) {
        RowDraft draft =
                rows.draft(this, "Size of the generator of " + supply.name()).units(units(supply.source()));
        Generator generator = net.generator(supply).orElse(null);
        if (generator == null) {
            rows.add(
                    draft.notAssessed("The supply " + supply.name() + " names no unit with a generator. Give its source"
                            + " in the brief, and \"plant\" in the item of that unit."));
            return;
        }
        List<Measure> apparent = new ArrayList<>();
        List<Measure> real = new ArrayList<>();
        for (StateFlow state : net.flows()) {
            SupplyFlow flow = state.flow(supply);
            if (flow.live()) {
                apparent.add(measure(scene, net, generator, state, flow, true));
                real.add(measure(scene, net, generator, state, flow, false));
            }
        }
        Optional<Measure> governing = Measure.governing(apparent);
        if (governing.isEmpty()) {
            rows.add(draft.held(supply.name() + " is not live in any state."));
            return;
        }
        Measure ofVA = governing.get();
        Measure ofW = Measure.governing(real).orElse(ofVA);
        boolean va = Measure.governing(List.of(ofVA, ofW)).orElse(ofVA) == ofVA;
        String mend = "Choose a larger generator, or state what is off while something else is on.";
        rows.add((va ? ofVA : ofW).atMost(draft, va ? "VA" : "W", 0, mend));
    }

    private static Measure measure(
            Scene scene, PowerNet net, Generator generator, StateFlow state, SupplyFlow flow, boolean apparent) {
        List<PowerGap> gaps = new ArrayList<>(flow.gaps());
        Double left = share(net, generator, state, flow.supply(), gaps);
        double reserve = scene.rules().valueOr(Figure.GENERATOR_RESERVE, 0);
        double rating = apparent ? generator.ratedVA() : generator.ratedW();
        String what = "The generator of " + flow.supply().name()
                + (left == null
                        ? " gives"
                        : " (" + Amounts.number(rating, 0) + (apparent ? " VA" : " W") + ", "
                                + Amounts.percent(left) + " left at this altitude and heat, "
                                + Amounts.percent(reserve) + " reserve) gives");
        return new Measure(
                state.state().name(),
                apparent ? flow.totalVA() : flow.totalW(),
                flow.meanW(),
                left == null ? null : Double.valueOf(rating * left * (1 - reserve)),
                what,
                gaps);
    }

    private static @Nullable Double share(
            PowerNet net, Generator generator, StateFlow state, Supply supply, List<PowerGap> gaps) {
        Generator.Derating derating = generator.derating();
        Double altitudeM = net.services().altitudeM();
        Weather weather = state.state().weather();
        if (derating == null) {
            gaps.add(
                    0,
                    new PowerGap(
                            supply.source(),
                            "How the generator of " + supply.name()
                                    + " loses power when high up or hot is not known. Give"
                                    + " derating in its item."));
        }
        if (altitudeM == null) {
            gaps.add(
                    0,
                    new PowerGap(
                            null,
                            "The altitude at which the generator works is not stated. Give altitudeM in the services."));
        }
        if (weather == null) {
            gaps.add(
                    0,
                    new PowerGap(
                            null,
                            "The air temperature " + state.state().name()
                                    + " is not stated. Give the weather of that state."));
        }
        return derating == null || altitudeM == null || weather == null
                ? null
                : Double.valueOf(derating.share(altitudeM, weather.outsideC()));
    }
}
