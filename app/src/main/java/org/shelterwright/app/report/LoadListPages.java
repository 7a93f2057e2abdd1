package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.SupplyPair;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;

/** The electrical load list as a report: limits, states, and by supply each unit with what it draws in each state. */
final class LoadListPages {
    private static final String UNKNOWN = "?";

    private static final double STATES_WIDTH = 88;

    /** Height that the rows of sums take together (mm). */
    private static final double SUMS = 10;

    private static final List<Column> UNIT = List.of(
            new Column("Unit", "", 56, false),
            new Column("Phase", "", 14, false),
            new Column("Rated", "W", 16, true),
            new Column("cos φ", "", 14, true),
            new Column("Apparent", "VA", 18, true),
            new Column("Current", "A", 16, true),
            new Column("Inrush", "A", 16, true),
            new Column("Mean use", "%", 18, true));

    private static final List<Column> SUPPLY = List.of(
            new Column("Supply", "", 50, false),
            new Column("State", "", 14, false),
            new Column("Fed from", "", 44, false),
            new Column("Line", "", 14, false),
            new Column("At once", "W", 22, true),
            new Column("At once", "VA", 22, true),
            new Column("Current", "A", 20, true),
            new Column("Rating", "A", 20, true),
            new Column("Use", "", 16, true),
            new Column("Mean", "W", 20, true),
            new Column("Charge", "A", 18, true));

    private final Issue issue;
    private final Typeface typeface;
    private final Flow flow;
    private final PowerNet net;
    private final List<OperatingState> states;

    LoadListPages(Typeface typeface, Issue issue) {
        this.issue = issue;
        this.typeface = typeface;
        this.net = PowerNet.of(issue.scene());
        this.states = net.services().states();
        this.flow = new Flow(
                typeface,
                SheetSize.A4_LYING,
                issue.name() + ", electrical load list",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.heading("Limits of power");
        LimitTable.set(flow, typeface, issue, Subject.POWER);
        if (!states.isEmpty()) {
            flow.heading("Operating states");
            StateMarks.legend(flow, typeface, states);
        }
        supplies();
        for (Supply supply : net.services().supplies()) {
            loads(supply);
        }
        open();
        Closing.set(
                flow,
                issue,
                Subject.POWER,
                "At once: rated loads that are on, times the diversity of the supply, and no less than the largest of"
                        + " them or their mean; what is fed onward is added in full. Cables, breakers, voltage drop, earthing and"
                        + " protection are not in this list.");
        return flow.pages();
    }

    private void supplies() {
        if (net.services().supplies().isEmpty()) {
            return;
        }
        flow.heading("Supplies by state");
        Columns columns = new Columns(typeface, SUPPLY);
        columns.head(flow);
        for (Supply supply : net.services().supplies()) {
            for (int i = 0; i < states.size(); i++) {
                SupplyFlow one = net.flows().get(i).flow(supply);
                for (int line = 0; line < one.peakVA().size() && one.live(); line++) {
                    columns.row(flow, supply(one, i, line), false);
                }
            }
        }
    }

    private List<String> supply(SupplyFlow one, int state, int line) {
        Supply feeder = one.feeder();
        Double ratingA = net.ratingA(one);
        boolean first = line == 0;
        return List.of(
                first ? one.supply().name() : "",
                first ? StateMarks.mark(state) : "",
                first ? feeder == null ? "own source" : feeder.name() : "",
                one.supply().lines() == 1 ? "" : "L" + (line + 1),
                Numerals.of(one.peakW().get(line), 0),
                Numerals.of(one.peakVA().get(line), 0),
                Numerals.of(one.currentA(line), 1),
                ratingA == null ? UNKNOWN : Numerals.of(ratingA, 1),
                ratingA == null ? "" : Numerals.of(one.currentA(line) / ratingA, 2),
                first ? Numerals.of(one.meanW(), 0) : "",
                first && one.chargeA() > 0 ? Numerals.of(one.chargeA(), 1) : "");
    }

    private void loads(Supply supply) {
        flow.heading("Loads of " + supply.name());
        flow.paragraph(Numerals.short3(supply.voltageV()) + Numerals.GAP + "V "
                + supply.current().name().toLowerCase(Locale.ROOT)
                + (supply.lines() == 3 ? ", three phases" : "") + ", diversity "
                + Numerals.short3(net.diversity(supply)) + ". In brackets: idle.");
        List<Column> head = new ArrayList<>(UNIT);
        head.addAll(StateMarks.columns(states, STATES_WIDTH));
        Columns columns = new Columns(typeface, head);
        columns.head(flow);
        for (Consumer consumer : net.consumers()) {
            Supply from = consumer.supply();
            Power power = consumer.power();
            if (from != null && power != null && from.id().equals(supply.id())) {
                columns.row(flow, load(consumer, power, supply), false);
            }
        }
        for (Supply fed : net.services().supplies()) {
            if (fed.fedFrom().contains(supply.id())) {
                columns.row(flow, onward(fed, supply), false);
            }
        }
        List<String> sum = blank("At once");
        List<String> mean = blank("Mean");
        for (StateFlow state : shown()) {
            SupplyFlow one = state.flow(supply);
            sum.add(one.live() ? Numerals.of(one.totalW(), 0) : "");
            mean.add(one.live() ? Numerals.of(one.meanW(), 0) : "");
        }
        if (!flow.fits(SUMS)) {
            flow.newPage();
            columns.head(flow);
        }
        columns.row(flow, sum, true);
        columns.row(flow, mean, true);
    }

    private List<String> load(Consumer consumer, Power power, Supply supply) {
        List<String> cells = new ArrayList<>();
        Draw any = net.flows().isEmpty()
                ? null
                : net.flows().get(0).draw(consumer.unit().id()).orElse(null);
        OptionalDouble factor = net.powerFactor(power, supply);
        double va = power.ratedW() / factor.orElse(1);
        cells.add(consumer.unit().name() + (consumer.inside() ? "" : " (trailer)"));
        cells.add(phase(supply, any));
        cells.add(Numerals.of(power.ratedW(), 0));
        cells.add(factor.isPresent() ? Numerals.of(factor.getAsDouble(), 2) : UNKNOWN);
        cells.add(Numerals.of(va, 0));
        cells.add(Numerals.of(va / supply.voltageV() / (power.threePhase() ? 3 : 1), 1));
        cells.add(figure(power.inrushA(), 1));
        cells.add(power.dutyShare() == null ? "100" : Numerals.of(power.dutyShare() * 100, 0));
        for (StateFlow state : shown()) {
            cells.add(state.draw(consumer.unit().id()).map(LoadListPages::drawn).orElse(""));
        }
        return cells;
    }

    private static String phase(Supply supply, @Nullable Draw draw) {
        return supply.lines() == 1 || draw == null ? "" : draw.line() < 0 ? "all" : "L" + (draw.line() + 1);
    }

    private static String drawn(Draw draw) {
        String watts = Numerals.of(draw.connectedW(), 0);
        return switch (draw.use()) {
            case ON -> watts;
            case IDLE -> "(" + watts + ")";
            case OFF -> "off";
        };
    }

    private List<String> onward(Supply fed, Supply supply) {
        List<String> cells = blank("Feeds " + fed.name());
        for (StateFlow state : shown()) {
            SupplyFlow one = state.flow(fed);
            Supply feeder = one.feeder();
            cells.add(feeder != null && feeder.id().equals(supply.id()) ? Numerals.of(one.takenW(), 0) : "");
        }
        return cells;
    }

    private void open() {
        List<Consumer> open =
                net.consumers().stream().filter(one -> one.gap() != null).toList();
        if (!open.isEmpty()) {
            flow.heading("Loads without a known supply");
            open.forEach(one -> Optional.ofNullable(one.gap()).ifPresent(gap -> flow.paragraph(gap.sentence())));
        }
        List<SupplyPair> apart = net.services().apart();
        if (!apart.isEmpty()) {
            flow.heading("Not on the same supply");
            apart.forEach(pair -> flow.paragraph(
                    RowText.names(List.of(pair.a(), pair.b()), issue.scene()) + ": " + pair.reason() + "."));
        }
    }

    private List<StateFlow> shown() {
        return net.flows().subList(0, Math.min(StateMarks.MOST, net.flows().size()));
    }

    private static List<String> blank(String name) {
        List<String> cells = new ArrayList<>();
        cells.add(name);
        while (cells.size() < UNIT.size()) {
            cells.add("");
        }
        return cells;
    }

    private static String figure(@Nullable Double value, int decimals) {
        return value == null ? UNKNOWN : Numerals.of(value, decimals);
    }
}
