package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;

/** The electrical load list as tables: each unit in each state, and each line of each supply in each state. */
final class LoadTables {
    private LoadTables() {}

    static Table loads(PowerNet net) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (StateFlow state : net.flows()) {
            for (Consumer consumer : net.consumers()) {
                rows.add(load(state, consumer));
            }
        }
        return new Table(
                "Loads",
                List.of(
                        "state",
                        "supply",
                        "unit",
                        "name",
                        "item",
                        "phase",
                        "rated W",
                        "inrush A",
                        "use",
                        "connected W",
                        "connected VA",
                        "mean W",
                        "heat into the room W",
                        "missing"),
                rows);
    }

    private static List<@Nullable Object> load(StateFlow state, Consumer consumer) {
        Supply supply = consumer.supply();
        Power power = consumer.power();
        Draw draw = state.draw(consumer.unit().id()).orElse(null);
        return Arrays.asList(
                state.state().name(),
                supply == null ? null : supply.name(),
                consumer.unit().id(),
                consumer.unit().name(),
                consumer.unit().item(),
                supply == null || supply.lines() == 1 || draw == null
                        ? null
                        : draw.line() < 0 ? "all" : "L" + (draw.line() + 1),
                power == null ? null : power.ratedW(),
                power == null ? null : power.inrushA(),
                draw == null ? null : draw.use().name().toLowerCase(Locale.ROOT),
                draw == null ? null : draw.connectedW(),
                draw == null ? null : draw.connectedVA(),
                draw == null ? null : draw.meanW(),
                draw == null ? null : draw.heatW(),
                consumer.gap() == null ? null : consumer.gap().sentence());
    }

    static Table supplies(PowerNet net) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (StateFlow state : net.flows()) {
            for (SupplyFlow flow : state.flows()) {
                for (int line = 0; line < flow.peakVA().size(); line++) {
                    rows.add(supply(net, state, flow, line));
                }
            }
        }
        return new Table(
                "Supplies",
                List.of(
                        "state",
                        "supply",
                        "kind",
                        "voltage V",
                        "live",
                        "fed from",
                        "line",
                        "at once W",
                        "at once VA",
                        "current A",
                        "rating A",
                        "mean of all lines W",
                        "taken from feeder W",
                        "loss W",
                        "charge A"),
                rows);
    }

    private static List<@Nullable Object> supply(PowerNet net, StateFlow state, SupplyFlow flow, int line) {
        Supply feeder = flow.feeder();
        return Arrays.asList(
                state.state().name(),
                flow.supply().name(),
                flow.supply().kind().name().toLowerCase(Locale.ROOT),
                flow.supply().voltageV(),
                flow.live() ? "yes" : "no",
                feeder == null ? null : feeder.name(),
                flow.supply().lines() == 1 ? null : "L" + (line + 1),
                flow.peakW().get(line),
                flow.peakVA().get(line),
                flow.currentA(line),
                net.ratingA(flow),
                flow.meanW(),
                feeder == null ? null : flow.takenW(),
                flow.lossW(),
                flow.chargeA());
    }
}
