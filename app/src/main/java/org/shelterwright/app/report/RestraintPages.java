package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Group;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Line;
import org.shelterwright.layouts.rules.LoadCase;

/** The restraint sheet: load cases, then every bolted unit with a sketch of its fixings, then what holds the loose ones. */
final class RestraintPages {
    private static final double TEXT = 2;
    private static final double SKETCH = 58;
    private static final double ROW = 4.3;
    private static final double[] STOPS = {61, 71, 87, 125, 139, 151, 162, 175};

    private static final List<Column> CASES = List.of(
            new Column("Load case", "", 46, false),
            new Column("Forward", "g", 13.5, true),
            new Column("Rearward", "g", 15, true),
            new Column("Sideways", "g", 15, true),
            new Column("Up", "g", 10, true),
            new Column("Down", "g", 11, true),
            new Column("With", "g down", 14, true),
            new Column("Factor", "ahead / else", 18, true),
            new Column("Bolts by", "", 32, false));

    private static final List<Column> LOOSE = List.of(
            new Column("Loose unit", "", 50, false),
            new Column("Pushes with", "N", 22, true),
            new Column("Hold bears", "N", 22, true),
            new Column("Under", "", 80, false));

    private final Typeface typeface;
    private final Issue issue;
    private final RestraintSheet sheet;
    private final Flow flow;

    RestraintPages(Typeface typeface, Issue issue, RestraintSheet sheet) {
        this.typeface = typeface;
        this.issue = issue;
        this.sheet = sheet;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", restraint",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        cases();
        flow.heading("How to read the sketches");
        flow.paragraph(
                "Each shows the plane that the unit is mounted on: of floor and roof from above with x to the right, of a"
                        + " wall with z up and x or y to the right. Dashed: the edge of what touches. Cross in a circle: centre of mass of what the"
                        + " fixings hold, with the push that governs. A filled bolt pulls, by the figure beside it in N; thin"
                        + " arrows are the shear on each bolt, the longest 8 mm. Torque is for the factor K of the rules and for dry,"
                        + " clean threads; the preload is held to a share of what bolt and hard point bear.");
        flow.heading("Bolted units");
        sheet.groups().forEach(this::group);
        loose();
        flow.heading("What is not looked at");
        flow.paragraph(
                "Friction, preload, shock and vibration; how stiff unit, bolt and wall are; hinges, drawers and what lies"
                        + " loose inside a unit; welds and frames of the unit itself; loads on the trailer.");
        return flow.pages();
    }

    private void cases() {
        flow.heading("Load cases");
        if (sheet.cases().isEmpty()) {
            flow.paragraph("None is set: nothing could be assessed. Choose a rule set with load cases in the brief.");
            return;
        }
        Columns columns = new Columns(typeface, CASES);
        columns.head(flow);
        for (LoadCase one : sheet.cases()) {
            String with = Numerals.short3(one.leastDownG())
                    + (one.mostDownG() > one.leastDownG() ? " to " + Numerals.short3(one.mostDownG()) : "");
            columns.row(
                    flow,
                    List.of(
                            one.name(),
                            Numerals.short3(one.forwardG()),
                            Numerals.short3(one.rearwardG()),
                            Numerals.short3(one.sidewaysG()),
                            Numerals.short3(one.upG()),
                            Numerals.short3(one.downG()),
                            with,
                            Numerals.short3(one.forwardFactor()) + " / " + Numerals.short3(one.factor()),
                            one.basis() == LoadCase.Basis.PROOF ? "proof load" : "ultimate load"),
                    false);
        }
        sheet.cases()
                .forEach(one -> flow.paragraph(one.name() + ": " + one.source().text() + "."));
    }

    private void group(Group group) {
        int lines = group.fixings().size();
        List<String> notes = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR)
                .lines(note(group), flow.right() - flow.left() - STOPS[0]);
        double height = Math.max(46, 12 + ROW * (lines + 1) + 4 * notes.size() + 5);
        flow.add(height, top -> {
            List<Shape> shapes = new ArrayList<>(head(group, top));
            Bounds paper = new Bounds(flow.left(), top + 7, flow.left() + SKETCH, top + height - 3);
            shapes.addAll(new FixingSketch(group, paper).shapes());
            double y = top + 11;
            y = table(group, y, shapes);
            for (int i = 0; i < notes.size(); i++) {
                shapes.add(Lettering.muted(notes.get(i), new Spot(flow.left() + STOPS[0], y + 5.6 + 4 * i), TEXT));
            }
            shapes.add(Lines.of(
                    Pen.of(0.18, Role.LINE.colour()),
                    new Spot(flow.left(), top + height - 1),
                    new Spot(flow.right(), top + height - 1)));
            return shapes;
        });
    }

    private List<Shape> head(Group group, double top) {
        Row row = row(group);
        List<Shape> shapes = new ArrayList<>();
        if (row != null) {
            shapes.addAll(VerdictSign.shapes(row.verdict(), new Spot(flow.left() + 2, top + 3), 1.9));
            Double use = row.use();
            String text = row.verdict().word() + (use == null ? "" : ", use " + Numerals.of(use, 2));
            shapes.add(Lettering.in(
                    Lettering.of(text, new Spot(flow.right(), top + 4), 2.2)
                            .with(Weight.MEDIUM)
                            .with(Align.END),
                    VerdictSign.colour(row.verdict())));
        }
        String name = group.unit().name() + " on " + group.on();
        shapes.add(Lettering.bold(name, new Spot(flow.left() + 6, top + 4), 2.5));
        return shapes;
    }

    private double table(Group group, double top, List<Shape> shapes) {
        List<String> heads = List.of("Fixing", "Bolt", "Into", "Pull N", "Shear N", "Use", "N·m");
        double x = flow.left();
        for (int i = 0; i < heads.size(); i++) {
            boolean figure = i >= 3;
            shapes.add(Lettering.muted(heads.get(i), new Spot(x + STOPS[figure ? i + 1 : i], top), TEXT)
                    .with(figure ? Align.END : Align.START));
        }
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR);
        double y = top + 1;
        for (Line line : group.fixings()) {
            y += ROW;
            List<String> cells = List.of(
                    line.name(),
                    line.bolt(),
                    wrap.shortened(line.into(), STOPS[3] - STOPS[2] + 1),
                    Numerals.of(line.pullN(), 0),
                    Numerals.of(line.shearN(), 0),
                    Numerals.of(Math.max(line.boltUse(), line.intoUse()), 2),
                    line.torqueNm() == null ? "?" : Numerals.of(line.torqueNm(), 0));
            for (int i = 0; i < cells.size(); i++) {
                boolean figure = i >= 3;
                shapes.add(Lettering.of(cells.get(i), new Spot(x + STOPS[figure ? i + 1 : i], y), TEXT)
                        .with(figure ? Align.END : Align.START));
            }
        }
        return y;
    }

    private String note(Group group) {
        if (!group.missing().isEmpty()) {
            return "Missing: " + String.join("; ", group.missing()) + ".";
        }
        Row row = row(group);
        String mend = row == null || row.mend() == null ? "" : " " + row.mend();
        return "Holds " + Numerals.of(group.massKg(), 0) + Numerals.GAP + "kg with its centre "
                + Numerals.of(group.centreHeightMm(), 0) + Numerals.GAP + "mm off. Sketch: " + group.governing() + "."
                + mend;
    }

    private @Nullable Row row(Group group) {
        return issue.ledger().of("restraint.fixing").stream()
                .filter(row -> row.units().contains(group.unit().id()))
                .findFirst()
                .orElse(null);
    }

    private void loose() {
        if (sheet.loose().isEmpty()) {
            return;
        }
        flow.heading("Loose units on the road");
        Columns columns = new Columns(typeface, LOOSE);
        columns.head(flow);
        for (RestraintSheet.Loose one : sheet.loose()) {
            Double hold = one.holdN();
            columns.row(
                    flow,
                    List.of(
                            one.unit().name(),
                            Numerals.of(one.pushN(), 0),
                            hold == null ? Verdict.NOT_ASSESSED.word() : Numerals.of(hold, 0),
                            one.under()),
                    false);
        }
    }
}
