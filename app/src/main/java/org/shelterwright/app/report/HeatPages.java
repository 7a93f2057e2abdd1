package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.air.HeatBalance;
import org.shelterwright.layouts.air.Shell;
import org.shelterwright.layouts.air.StateHeat;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;

/** The heat balance as a report: limits, states, gains and losses by state, heat passage of the body, heat of each unit. */
final class HeatPages {
    private static final double NAME = 96;
    private static final double STATES_WIDTH = 160;

    private static final List<Column> SHELL =
            List.of(new Column("Part of the body", "", 96, false), new Column("Heat passage UA", "W/K", 34, true));

    private final Issue issue;
    private final Typeface typeface;
    private final Flow flow;
    private final HeatBalance balance;
    private final List<OperatingState> states;

    HeatPages(Typeface typeface, Issue issue) {
        this.issue = issue;
        this.typeface = typeface;
        this.balance = HeatBalance.of(issue.scene());
        this.states = PowerNet.of(issue.scene()).services().states();
        this.flow = new Flow(
                typeface,
                SheetSize.A4_LYING,
                issue.name() + ", heat balance",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.heading("Limits of heat");
        LimitTable.set(flow, typeface, issue, Subject.HEAT);
        if (!states.isEmpty()) {
            flow.heading("Operating states");
            StateMarks.legend(flow, typeface, states);
            terms();
        }
        shell();
        if (!states.isEmpty()) {
            units();
        }
        Closing.set(
                flow,
                issue,
                Subject.HEAT,
                "Steady state: nothing is stored in walls or equipment, and the room has one temperature. Heat in"
                        + " moisture counts in full. Heating is reckoned without equipment, people and sun.");
        return flow.pages();
    }

    private List<Column> head(String first, String unit) {
        List<Column> head = new ArrayList<>();
        head.add(new Column(first, "", NAME, false));
        for (Column column : StateMarks.columns(states, STATES_WIDTH)) {
            head.add(new Column(column.upper(), unit, column.width(), true));
        }
        return head;
    }

    private void terms() {
        flow.heading("Heat into the room, by state");
        Columns columns = new Columns(typeface, head("Gain (+) or loss (" + Numerals.MINUS + ")", "W"));
        flow.paragraph("At the greatest room temperature; heating at the least, with the least outside air.");
        columns.head(flow);
        row(columns, "Equipment", StateHeat::equipmentW, false);
        row(columns, "Conversion and charging", StateHeat::conversionW, false);
        row(columns, "People, sensible", StateHeat::peopleSensibleW, false);
        row(columns, "People, moisture", StateHeat::peopleLatentW, false);
        row(columns, "Through walls, roof, floor, openings", StateHeat::throughW, false);
        row(columns, "Sun", StateHeat::sunW, false);
        row(columns, "Outside air, sensible", StateHeat::airSensibleW, false);
        row(columns, "Outside air, moisture", StateHeat::airLatentW, false);
        row(columns, "Sum", StateHeat::sumW, true);
        row(columns, "Cooling needed", StateHeat::coolingNeededW, false);
        row(columns, "Cooling installed and on", StateHeat::coolingW, false);
        row(columns, "Heating needed", StateHeat::heatingNeededW, false);
        row(columns, "Heating installed and on", StateHeat::heatingW, false);
        row(columns, "Outside air in all (m³/h)", StateHeat::airM3h, false);
        row(columns, "Fresh air needed (m³/h)", StateHeat::freshNeededM3h, false);
        row(columns, "Fresh air installed and on (m³/h)", StateHeat::freshM3h, false);
    }

    private void row(Columns columns, String name, Function<StateHeat, @Nullable Double> figure, boolean strong) {
        List<String> cells = new ArrayList<>(List.of(name));
        for (OperatingState state : shown()) {
            StateHeat heat = balance.states().stream()
                    .filter(one -> one.state().id().equals(state.id()))
                    .findFirst()
                    .orElse(null);
            Double value = heat == null ? null : figure.apply(heat);
            cells.add(heat == null ? "" : value == null ? "?" : Numerals.of(value, 0));
        }
        columns.row(flow, cells, strong);
    }

    private void shell() {
        flow.heading("Heat passage of the body");
        Shell shell = balance.shell();
        if (shell == null) {
            flow.paragraph("The insulation of the body is not known.");
            return;
        }
        Columns columns = new Columns(typeface, SHELL);
        columns.head(flow);
        columns.row(flow, List.of("Walls, without openings", Numerals.of(shell.wallsWK(), 1)), false);
        columns.row(flow, List.of("Openings", Numerals.of(shell.openingsWK(), 1)), false);
        columns.row(flow, List.of("Roof", Numerals.of(shell.roofWK(), 1)), false);
        columns.row(flow, List.of("Floor", Numerals.of(shell.floorWK(), 1)), false);
        columns.row(flow, List.of("All", Numerals.of(shell.totalWK(), 1)), true);
        flow.paragraph("Over outside areas; absorptance for the sun " + Numerals.short3(shell.absorptance()) + ".");
    }

    private void units() {
        flow.heading("Heat of each unit, mean, by state");
        Columns columns = new Columns(typeface, head("Unit", "W"));
        columns.head(flow);
        PowerNet net = PowerNet.of(issue.scene());
        for (Consumer consumer : net.consumers()) {
            if (consumer.inside()) {
                List<String> cells = new ArrayList<>(List.of(consumer.unit().name()));
                for (int i = 0; i < shown().size(); i++) {
                    StateFlow state = net.flows().get(i);
                    cells.add(state.draw(consumer.unit().id())
                            .map(Draw::heatW)
                            .map(heat -> Numerals.of(heat, 0))
                            .orElse("?"));
                }
                columns.row(flow, cells, false);
            }
        }
    }

    private List<OperatingState> shown() {
        return states.subList(0, Math.min(StateMarks.MOST, states.size()));
    }
}
