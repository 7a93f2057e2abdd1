package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.layouts.air.HeatBalance;
import org.shelterwright.layouts.air.StateHeat;

/** The heat balance as a table, one row for each state. */
final class HeatTable {
    private HeatTable() {}

    static Table of(HeatBalance balance) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (StateHeat heat : balance.states()) {
            rows.add(Arrays.asList(
                    heat.state().name(),
                    heat.weather().outsideC(),
                    heat.weather().roomLeastC(),
                    heat.weather().roomMostC(),
                    heat.state().people(),
                    heat.equipmentW(),
                    heat.conversionW(),
                    heat.peopleSensibleW(),
                    heat.peopleLatentW(),
                    heat.throughW(),
                    heat.sunW(),
                    heat.airM3h(),
                    heat.airSensibleW(),
                    heat.airLatentW(),
                    heat.sumW(),
                    heat.coolingNeededW(),
                    heat.coolingW(),
                    heat.heatingNeededW(),
                    heat.heatingW(),
                    heat.freshNeededM3h(),
                    heat.freshM3h(),
                    heat.gaps().isEmpty() ? null : heat.gaps().get(0).sentence()));
        }
        return new Table(
                "Heat balance",
                List.of(
                        "state",
                        "outside °C",
                        "room at least °C",
                        "room at most °C",
                        "people",
                        "equipment W",
                        "conversion and charging W",
                        "people sensible W",
                        "people moisture W",
                        "through the body W",
                        "sun W",
                        "outside air m³/h",
                        "outside air sensible W",
                        "outside air moisture W",
                        "sum W",
                        "cooling needed W",
                        "cooling on W",
                        "heating needed W",
                        "heating on W",
                        "fresh air needed m³/h",
                        "fresh air on m³/h",
                        "missing"),
                rows);
    }
}
