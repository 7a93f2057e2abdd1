package org.shelterwright.app.report;

import java.util.List;
import org.shelterwright.app.arrangement.WiringPicture;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.app.view.Caption;
import org.shelterwright.layouts.air.HeatBalance;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.power.PowerNet;

/** Power, heat and cables. */
final class ServiceChapters {
    private ServiceChapters() {}

    static void power(DocumentSet set, Issue issue, Press press) {
        PowerNet net = PowerNet.of(issue.scene());
        Table loads = LoadTables.loads(net);
        Table supplies = LoadTables.supplies(net);
        set.add(
                7,
                "electrical-load-list.pdf",
                "Electrical load list: loads by supply, phase and state",
                press.pdf(issue, "Electrical load list", new LoadListPages(press.typeface(), issue).pages()));
        set.add(7, "electrical-loads.csv", "Electrical load list as a table: loads", Csv.write(loads));
        set.add(7, "electrical-supplies.csv", "Electrical load list as a table: supplies", Csv.write(supplies));
        set.add(
                7,
                "electrical-load-list.xlsx",
                "Electrical load list as a workbook",
                Xlsx.write(List.of(loads, supplies)));
    }

    static void heat(DocumentSet set, Issue issue, Press press) {
        Table table = HeatTable.of(HeatBalance.of(issue.scene()));
        set.add(
                8,
                "heat-balance.pdf",
                "Heat balance: gains and losses by state, cooling, heating, fresh air",
                press.pdf(issue, "Heat balance", new HeatPages(press.typeface(), issue).pages()));
        set.add(8, "heat-balance.csv", "Heat balance as a table", Csv.write(table));
        set.add(8, "heat-balance.xlsx", "Heat balance as a workbook", Xlsx.write(List.of(table)));
    }

    static void cables(DocumentSet set, Issue issue, Press press) {
        CableNet net = CableNet.of(issue.scene());
        Table schedule = CableTables.schedule(net);
        Table cuts = CableTables.cuts(net);
        Table fills = CableTables.fills(issue.scene(), net);
        Table connections = CableTables.connections(issue.scene(), net);
        set.add(
                9,
                "cable-schedule.pdf",
                "Cable schedule: wires, cut list by drum, tray fill, connections",
                press.pdf(issue, "Cable schedule", new CablePages(press.typeface(), issue).pages()));
        set.add(9, "cable-schedule.csv", "Cable schedule as a table: wires", Csv.write(schedule));
        set.add(9, "cable-cuts.csv", "Cable schedule as a table: cut list", Csv.write(cuts));
        set.add(9, "cable-trays.csv", "Cable schedule as a table: tray fill", Csv.write(fills));
        set.add(9, "cable-connections.csv", "Cable schedule as a table: connections", Csv.write(connections));
        set.add(
                9,
                "cable-schedule.xlsx",
                "Cable schedule as a workbook",
                Xlsx.write(List.of(schedule, cuts, fills, connections)));
        Drawing overview = new WiringPicture(press.typeface())
                .of(issue.scene(), new Caption(issue.name(), "wiring overview, on station", issue.foot()));
        set.add(
                9,
                "wiring-overview.pdf",
                "Wiring overview drawing",
                press.pdf(issue, "Wiring overview", List.of(overview)));
        set.add(
                9,
                "wiring-overview.svg",
                "Wiring overview drawing, to draw on",
                press.svg().write(overview));
    }
}
