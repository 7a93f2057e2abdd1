package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.app.drawing.Circle;
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
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.report.RowBlock;
import org.shelterwright.app.report.RowGroup;
import org.shelterwright.app.report.RowText;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Leg;

/** Does it go: the line of legs, the table leg by unit with what governs, then every limit leg by leg. */
final class JourneyPages {
    private static final List<Column> TABLE = List.of(
            new Column("Leg", "", 18, false),
            new Column("What", "", 40, false),
            new Column("Verdict", "", 20, false),
            new Column("Governing", "", 44, false),
            new Column("Use", "", 12, true),
            new Column("Source", "", 41, false));

    private final Typeface typeface;
    private final JourneyIssue issue;
    private final Flow flow;

    JourneyPages(Typeface typeface, JourneyIssue issue) {
        this.typeface = typeface;
        this.issue = issue;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", does it go",
                "journey " + issue.journey().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        RowBlock counts = new RowBlock(typeface, issue::names);
        flow.add(12, top -> counts.counts(flow.left(), top + 4, issue.ledger().all()));
        flow.heading("Legs");
        flow.add(24, this::line);
        flow.heading("Leg by leg, what goes and what governs");
        Columns columns = new Columns(typeface, TABLE);
        columns.head(flow);
        for (JourneyLedger.Group cell : issue.ledger().grouped(issue.scene().legs())) {
            Row row = cell.governing();
            columns.row(
                    flow,
                    List.of(
                            cell.leg().number() + " " + cell.leg().leg().mode().word(),
                            issue.names(cell.units()),
                            row.verdict().word(),
                            row.title(),
                            RowText.use(row),
                            row.source().text()),
                    false);
        }
        issue.ledger().legs().forEach(this::leg);
        flow.heading("What is not looked at");
        flow.paragraph(
                "Springs and tyres that give way, wind, loads that sway, what tightening adds to a lashing, the strength of a"
                        + " car's frame under its lashings, stability of ships, balance of aircraft, nails and timber of blocks,"
                        + " humps and dips of the way, platforms, tunnels, shocks of a shunted train beyond the load cases"
                        + " named on the load sheets. The carrier accepts the load.");
        return flow.pages();
    }

    /** Stations as rings, legs as lines between them, with sign and verdict of each. */
    private List<Shape> line(double top) {
        List<Shape> shapes = new ArrayList<>();
        List<LegLedger> legs = issue.ledger().legs();
        double y = top + 11;
        double step = (flow.right() - flow.left() - 16) / Math.max(1, legs.size());
        double x = flow.left() + 8;
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i).leg();
            double from = x + i * step;
            Verdict worst = legs.get(i).ledger().worst();
            shapes.add(Lines.of(Pen.of(0.6, Role.LINES.colour()), new Spot(from, y), new Spot(from + step, y)));
            double middle = from + step / 2;
            shapes.addAll(VerdictSign.shapes(worst, new Spot(middle - 12, y - 5.2), 2));
            shapes.add(Lettering.bold((i + 1) + " " + leg.mode().word(), new Spot(middle - 8.4, y - 4), 2.2));
            shapes.add(Lettering.muted(
                            leg.distanceKm() == null
                                    ? leg.name()
                                    : Numerals.of(leg.distanceKm(), 0) + " km, " + leg.name(),
                            new Spot(middle, y + 4.6),
                            CarPaper.SMALL)
                    .with(Align.MIDDLE));
            station(shapes, new Spot(from, y), leg.from(), i == 0 ? Align.START : Align.MIDDLE);
            if (i == legs.size() - 1) {
                station(shapes, new Spot(from + step, y), leg.to(), Align.END);
            }
        }
        return shapes;
    }

    private static void station(List<Shape> shapes, Spot at, String name, Align align) {
        shapes.add(new Circle(at, 1.5, Role.RAISED.colour(), Pen.of(0.45, Role.TEXT.colour())));
        double shift = align == Align.START ? -1.5 : align == Align.END ? 1.5 : 0;
        shapes.add(Lettering.of(name, at.plus(shift, 9.4), 2).with(align));
    }

    private void leg(LegLedger leg) {
        flow.heading("Leg " + leg.number() + ", " + leg.leg().name() + ": " + JourneyIssue.verdicts(leg.ledger()));
        Function<List<String>, String> names = units -> units.size() > 3 ? last(units) : issue.names(units);
        RowBlock block = new RowBlock(typeface, names);
        block.head(flow);
        double close = issue.scene().legs().get(leg.number() - 1).rules().valueOr(Figure.CLOSE_SHARE, 0.9);
        List<Row> rows = Shortened.of(leg.ledger().rows());
        RowGroup.of(rows).forEach(group -> block.add(flow, group, "", close));
        flow.gap(2);
        flow.paragraph(
                "Every limit that is not met, and of each other one the tightest row; all rows stand in the table of the"
                        + " ledger.");
        rows.stream()
                .filter(row -> row.verdict() != Verdict.MET)
                .forEach(row -> flow.paragraph(JourneyIssue.sentences(row, leg.leg())));
    }

    /** Many are on one car, whose name comes last. */
    private String last(List<String> units) {
        return issue.names(List.of(units.get(units.size() - 1)));
    }
}
