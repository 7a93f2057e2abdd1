package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.elevation.Codes;
import org.shelterwright.app.elevation.LabelSheets;
import org.shelterwright.app.elevation.RackElevation;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.app.workpack.PackHead;
import org.shelterwright.app.workpack.WorkPack;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.ledger.racks.FilledBay;
import org.shelterwright.layouts.scene.Scene;

/** What people work from: the work pack, and what is inside the units. */
final class WorkChapters {
    private WorkChapters() {}

    static void workPack(DocumentSet set, Issue issue, Press press) {
        Optional<BoltDownPlan> plan = BoltDownPlan.of(issue.scene());
        if (plan.isEmpty()) {
            return;
        }
        PackHead head = new PackHead(
                issue.name(),
                issue.scene().brief().id(),
                issue.particulars().date().toString(),
                Issue.CAUTION,
                issue.foot());
        WorkPack pack = WorkPack.of(head, issue.scene(), plan.get(), press.typeface());
        set.add(
                12,
                "work-pack.pdf",
                "Work pack: order, step cards, lists",
                press.pdf(issue, "Work pack", pack.pages()));
        set.add(12, "work-pack.html", "Work pack for a tablet, works without a network, to sign in", pack.tablet());
        set.add(
                13,
                "pick-list.csv",
                "Pick list: parts and fasteners by step",
                Csv.write(pack.lists().get(0)));
        set.add(13, "pick-list.xlsx", "Pick list, fasteners and tools as a workbook", Xlsx.write(pack.lists()));
        set.add(14, "labels.pdf", "Labels for units and holes", press.pdf(issue, "Labels", pack.labels()));
    }

    static void inside(DocumentSet set, Issue issue, Press press) {
        Scene scene = issue.scene();
        if (scene.brief().listed().isEmpty()) {
            return;
        }
        List<FilledBay> bays = FilledBay.of(scene);
        List<Drawing> sheets = new ArrayList<>();
        for (int i = 0; i < bays.size(); i++) {
            String sheet = i + 1 + " / " + bays.size();
            sheets.add(new RackElevation(press.typeface(), new Codes(scene), bays.get(i))
                    .sheet(
                            issue.name(),
                            scene.brief().id() + "-15",
                            sheet,
                            issue.madeWith(),
                            issue.particulars(),
                            notes(issue),
                            LimitTable.of(issue, bays.get(i))));
        }
        if (!sheets.isEmpty()) {
            String what = "Rack elevations";
            set.add(15, "rack-elevations.pdf", what + ": front, rear, side, pieces", press.pdf(issue, what, sheets));
            for (int i = 0; i < sheets.size(); i++) {
                String name = "rack-elevation-" + (i + 1) + ".svg";
                set.add(
                        15,
                        name,
                        what + ", sheet " + (i + 1) + ", to draw on",
                        press.svg().write(sheets.get(i)));
            }
        }
        Table table = PieceTables.of(scene);
        set.add(
                16,
                "stowage-list.pdf",
                "Stowage list: by place with sketches, and by task",
                press.pdf(issue, "Stowage list", new StowagePages(press.typeface(), issue).pages()));
        set.add(16, "pieces.csv", "Pieces with their places as a table", Csv.write(table));
        set.add(16, "pieces.xlsx", "Pieces with their places as a workbook", Xlsx.write(List.of(table)));
        set.add(
                17,
                "stowage-labels.pdf",
                "Labels for places and pieces",
                press.pdf(issue, "Labels of places and pieces", new LabelSheets(press.typeface(), scene).pages()));
        set.add(
                18,
                "count-list.pdf",
                "Check list to count on and count off",
                press.pdf(issue, "Count on, count off", new CountPages(press.typeface(), issue).pages()));
    }

    private static List<String> notes(Issue issue) {
        return List.of(
                "Height unit 44.45 mm, hole centres 465.1 mm, holes 15.875, 15.875 and 12.7 mm apart (after IEC 60297-3-100)."
                        + " Units count from below. Circles at the rear: faces with cables.",
                "Ledger of " + issue.particulars().date() + ": " + issue.verdicts() + ".",
                Issue.CAUTION);
    }
}
