package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.brief.Activity;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Weather;

/** Operating states under short marks, so that each has a column. */
final class StateMarks {
    private static final List<Column> COLUMNS = List.of(
            new Column("State", "", 14, false),
            new Column("", "", 52, false),
            new Column("Live", "", 50, false),
            new Column("Lasts", "h", 14, true),
            new Column("People", "", 14, true),
            new Column("Activity", "", 34, false),
            new Column("Outside", "°C", 16, true),
            new Column("Room", "°C", 22, true),
            new Column("Sun", "W/m²", 26, true),
            new Column("Moisture", "g/kg", 18, true));

    /** Most columns of states that a sheet has room for. */
    static final int MOST = 8;

    private StateMarks() {}

    static String mark(int index) {
        return "S" + (index + 1);
    }

    /** One column for each state, to share a width (mm). */
    static List<Column> columns(List<OperatingState> states, double width) {
        List<Column> columns = new ArrayList<>();
        int count = Math.min(MOST, states.size());
        for (int i = 0; i < count; i++) {
            columns.add(new Column(mark(i), "W", Math.min(22, width / count), true));
        }
        return columns;
    }

    static void legend(Flow flow, Typeface typeface, List<OperatingState> states) {
        Columns columns = new Columns(typeface, COLUMNS);
        columns.head(flow);
        for (int i = 0; i < states.size(); i++) {
            OperatingState state = states.get(i);
            Weather weather = state.weather();
            Double hours = state.hours();
            List<String> cells = new ArrayList<>(List.of(
                    mark(i),
                    state.name(),
                    state.live().isEmpty() ? "nothing" : String.join(", ", state.live()),
                    hours == null ? "" : Numerals.short3(hours),
                    Integer.toString(state.people()),
                    activity(state.activity())));
            cells.addAll(
                    weather == null
                            ? List.of("", "", "", "")
                            : List.of(
                                    Numerals.short3(weather.outsideC()),
                                    Numerals.short3(weather.roomLeastC()) + " to "
                                            + Numerals.short3(weather.roomMostC()),
                                    Numerals.of(weather.roofSunWm2(), 0) + " / " + Numerals.of(weather.wallSunWm2(), 0),
                                    Numerals.short3(weather.moistureGKg())));
            columns.row(flow, cells, false);
        }
        flow.paragraph(
                "Sun: on the roof / on the walls, mean of all four. Moisture: of the outside air above that of the"
                        + " room.");
        if (states.size() > MOST) {
            flow.paragraph("Columns show the first " + MOST + " states; the tables (CSV, XLSX) have all.");
        }
    }

    private static String activity(@Nullable Activity activity) {
        return activity == null ? "" : activity.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
