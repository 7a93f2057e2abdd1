package org.shelterwright.app.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shelterwright.app.arrangement.GeneralArrangement;
import org.shelterwright.app.arrangement.PlanPicture;
import org.shelterwright.app.arrangement.WiringPicture;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.elevation.Codes;
import org.shelterwright.app.elevation.LabelSheets;
import org.shelterwright.app.elevation.RackElevation;
import org.shelterwright.app.gltf.Glb;
import org.shelterwright.app.pdf.Pdf;
import org.shelterwright.app.picture.Png;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Caption;
import org.shelterwright.app.view.IsometricPicture;
import org.shelterwright.app.view.PictureSheet;
import org.shelterwright.app.workpack.PackHead;
import org.shelterwright.app.workpack.WorkPack;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.air.HeatBalance;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.lifting.LiftPlan;
import org.shelterwright.layouts.ledger.racks.FilledBay;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.scene.Scene;

/**
 * Writes all documents of a layout into a folder, numbered, with a contents sheet. The same scene, ledger and particulars
 * give the same bytes, workbooks excepted (same cells). Not for several threads.
 */
public final class Report {

    private final String program;
    private final Typeface typeface = new Typeface();
    private final Svg svg = new Svg(typeface);
    private final Png png = new Png(typeface);
    private final Pdf pdf;

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    public Report(String program) {
        this.program = program;
        this.pdf = new Pdf(program);
    }

    /**
     * Makes all documents, then writes them. Either all are written or none.
     *
     * @param folder is made if it is not there; documents of the same names in it are replaced
     * @return the files, in the order of the contents sheet, which comes first
     * @throws InputException if the folder cannot be written
     */
    public List<Document> write(Scene scene, Ledger ledger, Particulars particulars, Path folder) {
        Issue issue = new Issue(scene, ledger, particulars, program);
        DocumentSet set = new DocumentSet();
        arrangement(set, issue);
        ledger(set, issue);
        masses(set, issue);
        for (Situation situation : Situation.values()) {
            pictures(set, issue, situation);
        }
        for (Situation situation : Situation.values()) {
            set.add(
                    5,
                    "model-" + file(situation) + ".glb",
                    "3D model (glTF 2.0), " + words(situation),
                    Glb.write(scene, situation, program));
        }
        restraint(set, issue);
        lifting(set, issue);
        power(set, issue);
        heat(set, issue);
        cables(set, issue);
        workPack(set, issue);
        inside(set, issue);
        List<Document> documents = set.withContents(issue);
        new SafeFolder(folder).write(documents);
        return documents;
    }

    private void inside(DocumentSet set, Issue issue) {
        Scene scene = issue.scene();
        if (scene.brief().listed().isEmpty()) {
            return;
        }
        List<FilledBay> bays = FilledBay.of(scene);
        List<Drawing> sheets = new ArrayList<>();
        for (int i = 0; i < bays.size(); i++) {
            String sheet = i + 1 + " / " + bays.size();
            sheets.add(new RackElevation(typeface, new Codes(scene), bays.get(i))
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
            set.add(15, "rack-elevations.pdf", what + ": front, rear, side, pieces", pdf(issue, what, sheets));
            for (int i = 0; i < sheets.size(); i++) {
                String name = "rack-elevation-" + (i + 1) + ".svg";
                set.add(15, name, what + ", sheet " + (i + 1) + ", to draw on", svg.write(sheets.get(i)));
            }
        }
        Table table = PieceTables.of(scene);
        set.add(
                16,
                "stowage-list.pdf",
                "Stowage list: by place with sketches, and by task",
                pdf(issue, "Stowage list", new StowagePages(typeface, issue).pages()));
        set.add(16, "pieces.csv", "Pieces with their places as a table", Csv.write(table));
        set.add(16, "pieces.xlsx", "Pieces with their places as a workbook", Xlsx.write(List.of(table)));
        set.add(
                17,
                "stowage-labels.pdf",
                "Labels for places and pieces",
                pdf(issue, "Labels of places and pieces", new LabelSheets(typeface, scene).pages()));
        set.add(
                18,
                "count-list.pdf",
                "Check list to count on and count off",
                pdf(issue, "Count on, count off", new CountPages(typeface, issue).pages()));
    }

    private static List<String> notes(Issue issue) {
        return List.of(
                "Height unit 44.45 mm, hole centres 465.1 mm, holes 15.875, 15.875 and 12.7 mm apart (after IEC 60297-3-100)."
                        + " Units count from below. Circles at the rear: faces with cables.",
                "Ledger of " + issue.particulars().date() + ": " + issue.verdicts() + ".",
                Issue.CAUTION);
    }

    /** Writes the work pack alone. */
    public List<Document> writeWorkPack(Scene scene, Ledger ledger, Particulars particulars, Path folder) {
        Issue issue = new Issue(scene, ledger, particulars, program);
        DocumentSet set = new DocumentSet();
        workPack(set, issue);
        List<Document> documents = set.withContents(issue);
        new SafeFolder(folder).write(documents);
        return documents;
    }

    private void workPack(DocumentSet set, Issue issue) {
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
        WorkPack pack = WorkPack.of(head, issue.scene(), plan.get(), typeface);
        set.add(12, "work-pack.pdf", "Work pack: order, step cards, lists", pdf(issue, "Work pack", pack.pages()));
        set.add(12, "work-pack.html", "Work pack for a tablet, works without a network, to sign in", pack.tablet());
        set.add(
                13,
                "pick-list.csv",
                "Pick list: parts and fasteners by step",
                Csv.write(pack.lists().get(0)));
        set.add(13, "pick-list.xlsx", "Pick list, fasteners and tools as a workbook", Xlsx.write(pack.lists()));
        set.add(14, "labels.pdf", "Labels for units and holes", pdf(issue, "Labels", pack.labels()));
    }

    private void arrangement(DocumentSet set, Issue issue) {
        List<Drawing> sheets =
                new GeneralArrangement(typeface).sheets(issue.scene(), Situation.ON_STATION, DrawingNotes.of(issue));
        String what = "General arrangement drawing";
        set.add(1, "general-arrangement.pdf", what + ", true to scale", pdf(issue, what, sheets));
        for (int i = 0; i < sheets.size(); i++) {
            String name = i == 0 ? "general-arrangement.svg" : "general-arrangement-" + (i + 1) + ".svg";
            set.add(1, name, what + ", sheet " + (i + 1) + ", to draw on", svg.write(sheets.get(i)));
        }
    }

    private void ledger(DocumentSet set, Issue issue) {
        Table table = LedgerTable.of(issue);
        set.add(
                2,
                "ledger.pdf",
                "Ledger: every limit with demand, capacity, margin and source",
                pdf(issue, "Ledger", new LedgerPages(typeface, issue).pages()));
        set.add(2, "ledger.csv", "Ledger as a table", Csv.write(table));
        set.add(2, "ledger.xlsx", "Ledger as a workbook", Xlsx.write(List.of(table)));
    }

    private void masses(DocumentSet set, Issue issue) {
        Table lines = MassTables.lines(issue.masses());
        Table states = MassTables.states(issue.masses());
        Table axles = MassTables.axles(issue.masses());
        set.add(
                3,
                "mass-statement.pdf",
                "Mass statement: masses, arms, moments, load states, axles, reserves",
                pdf(issue, "Mass statement", new MassPages(typeface, issue).pages()));
        set.add(3, "mass-lines.csv", "Mass statement as a table: lines", Csv.write(lines));
        set.add(3, "mass-states.csv", "Mass statement as a table: load states", Csv.write(states));
        set.add(3, "mass-axles.csv", "Mass statement as a table: axles and wheels", Csv.write(axles));
        set.add(3, "mass-statement.xlsx", "Mass statement as a workbook", Xlsx.write(List.of(lines, states, axles)));
    }

    private void power(DocumentSet set, Issue issue) {
        PowerNet net = PowerNet.of(issue.scene());
        Table loads = LoadTables.loads(net);
        Table supplies = LoadTables.supplies(net);
        set.add(
                7,
                "electrical-load-list.pdf",
                "Electrical load list: loads by supply, phase and state",
                pdf(issue, "Electrical load list", new LoadListPages(typeface, issue).pages()));
        set.add(7, "electrical-loads.csv", "Electrical load list as a table: loads", Csv.write(loads));
        set.add(7, "electrical-supplies.csv", "Electrical load list as a table: supplies", Csv.write(supplies));
        set.add(
                7,
                "electrical-load-list.xlsx",
                "Electrical load list as a workbook",
                Xlsx.write(List.of(loads, supplies)));
    }

    private void heat(DocumentSet set, Issue issue) {
        Table table = HeatTable.of(HeatBalance.of(issue.scene()));
        set.add(
                8,
                "heat-balance.pdf",
                "Heat balance: gains and losses by state, cooling, heating, fresh air",
                pdf(issue, "Heat balance", new HeatPages(typeface, issue).pages()));
        set.add(8, "heat-balance.csv", "Heat balance as a table", Csv.write(table));
        set.add(8, "heat-balance.xlsx", "Heat balance as a workbook", Xlsx.write(List.of(table)));
    }

    private void cables(DocumentSet set, Issue issue) {
        CableNet net = CableNet.of(issue.scene());
        Table schedule = CableTables.schedule(net);
        Table cuts = CableTables.cuts(net);
        Table fills = CableTables.fills(issue.scene(), net);
        Table connections = CableTables.connections(issue.scene(), net);
        set.add(
                9,
                "cable-schedule.pdf",
                "Cable schedule: wires, cut list by drum, tray fill, connections",
                pdf(issue, "Cable schedule", new CablePages(typeface, issue).pages()));
        set.add(9, "cable-schedule.csv", "Cable schedule as a table: wires", Csv.write(schedule));
        set.add(9, "cable-cuts.csv", "Cable schedule as a table: cut list", Csv.write(cuts));
        set.add(9, "cable-trays.csv", "Cable schedule as a table: tray fill", Csv.write(fills));
        set.add(9, "cable-connections.csv", "Cable schedule as a table: connections", Csv.write(connections));
        set.add(
                9,
                "cable-schedule.xlsx",
                "Cable schedule as a workbook",
                Xlsx.write(List.of(schedule, cuts, fills, connections)));
        Drawing overview = new WiringPicture(typeface)
                .of(issue.scene(), new Caption(issue.name(), "wiring overview, on station", issue.foot()));
        set.add(9, "wiring-overview.pdf", "Wiring overview drawing", pdf(issue, "Wiring overview", List.of(overview)));
        set.add(9, "wiring-overview.svg", "Wiring overview drawing, to draw on", svg.write(overview));
    }

    private void restraint(DocumentSet set, Issue issue) {
        RestraintSheet sheet = RestraintSheet.of(issue.scene());
        Table table = RestraintTable.of(sheet);
        set.add(
                6,
                "restraint.pdf",
                "Restraint sheet: forces on every fixing, margins, torques",
                pdf(issue, "Restraint", new RestraintPages(typeface, issue, sheet).pages()));
        set.add(6, "restraint.csv", "Restraint sheet as a table", Csv.write(table));
        set.add(6, "restraint.xlsx", "Restraint sheet as a workbook", Xlsx.write(List.of(table)));
    }

    private void lifting(DocumentSet set, Issue issue) {
        Optional<LiftPlan> plan = LiftPlan.of(issue.scene());
        Table table = LiftingTable.of(plan);
        set.add(
                6,
                "lifting.pdf",
                "Lifting sheet: sling, legs, eyes, how far the centre of mass may go",
                pdf(issue, "Lifting", new LiftingPages(typeface, issue, plan).pages()));
        set.add(6, "lifting.csv", "Lifting sheet as a table", Csv.write(table));
        set.add(6, "lifting.xlsx", "Lifting sheet as a workbook", Xlsx.write(List.of(table)));
    }

    private void pictures(DocumentSet set, Issue issue, Situation situation) {
        picture(set, issue, situation, Axonometry.FROM_REAR_RIGHT, "rear right");
        picture(set, issue, situation, Axonometry.FROM_FRONT_LEFT, "front left");
        Caption caption = caption(issue, situation, "from above");
        Drawing plan = new PlanPicture(typeface).of(issue.scene(), situation, caption);
        String name = "picture-" + file(situation) + "-plan";
        set.add(4, name + ".png", "Plan, " + words(situation), png.write(plan));
        set.add(4, name + ".svg", "Plan, " + words(situation), svg.write(plan));
    }

    private void picture(DocumentSet set, Issue issue, Situation situation, Axonometry view, String corner) {
        Caption caption = caption(issue, situation, "seen from the " + corner);
        PictureSheet sheet = new IsometricPicture(typeface)
                .of(issue.scene(), situation, view, caption, DrawingNotes.marks(issue, situation));
        String name = "picture-" + file(situation) + "-" + corner.replace(' ', '-');
        String what = "Picture, " + words(situation) + ", from the " + corner;
        set.add(4, name + ".png", what, png.write(sheet));
        set.add(4, name + ".svg", what, svg.write(sheet.drawing()));
    }

    private Caption caption(Issue issue, Situation situation, String from) {
        return new Caption(issue.name(), words(situation) + ", " + from, issue.foot());
    }

    private byte[] pdf(Issue issue, String what, List<Drawing> pages) {
        return pdf.write(
                issue.name() + ", " + what.toLowerCase(Locale.ROOT),
                issue.particulars().date(),
                pages);
    }

    private static String words(Situation situation) {
        return situation == Situation.ON_STATION ? "on station" : "on the road";
    }

    private static String file(Situation situation) {
        return words(situation).replace(' ', '-');
    }
}
