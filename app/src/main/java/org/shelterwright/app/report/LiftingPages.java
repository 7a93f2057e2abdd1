package org.shelterwright.app.report;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.lifting.LiftPlan;
import org.shelterwright.layouts.ledger.lifting.LiftPlan.Leg;
import org.shelterwright.layouts.rules.Figure;

/** The lifting sheet: limits, sketch, legs, and what to look at before lifting. */
final class LiftingPages {
    private static final double SKETCH = 128;

    private static final List<Column> LEGS = List.of(
            new Column("Lifting eye", "", 58, false),
            new Column("Share", "%", 16, true),
            new Column("Angle", "°", 16, true),
            new Column("Leg length", "mm", 22, true),
            new Column("Force in the leg", "N", 28, true),
            new Column("Rating", "N", 20, true),
            new Column("Use", "", 14, true));

    private final Typeface typeface;
    private final Issue issue;
    private final Optional<LiftPlan> plan;
    private final Flow flow;

    LiftingPages(Typeface typeface, Issue issue, Optional<LiftPlan> plan) {
        this.typeface = typeface;
        this.issue = issue;
        this.plan = plan;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", lifting",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        flow.heading("Limits");
        RowBlock block = new RowBlock(typeface, issue.scene());
        double close = issue.scene().rules().valueOr(Figure.CLOSE_SHARE, 0.9);
        List<Row> rows = issue.ledger().rows().stream()
                .filter(row -> row.subject() == Subject.LIFTING)
                .toList();
        if (rows.isEmpty()) {
            flow.paragraph("No limit of lifting was checked.");
        } else {
            block.head(flow);
            RowGroup.of(rows).forEach(group -> block.add(flow, group, "", close));
        }
        flow.gap(1.6);
        rows.forEach(row -> flow.paragraph(row.mend() == null ? row.finding() : row.finding() + " " + row.mend()));
        plan.ifPresent(this::plan);
        flow.heading("Before lifting");
        List.of(
                        "A qualified person plans the lift, checks sling, shackles and eyes, and gives the signals. Nobody"
                                + " stands under the load or rides in it.",
                        "The figures hold for the body off its carrier, as on the road, nobody aboard, loose units stowed, doors"
                                + " latched, locks to the carrier undone.",
                        "Lift it a hand's breadth first: it must hang level and every leg must be taut. If not, set it down"
                                + " and change the legs. The centre of mass is calculated; weigh the body before the first lift.",
                        "Take a sling of steel with hooks or shackles that fit the eyes. Wind, uneven ground under the crane"
                                + " and swing are not part of the figures.",
                        "Forks go in to their full length and the load rests against the fork back; the truck's own plate"
                                + " must allow the mass at that distance. Stands rest on firm, level ground, are raised in small"
                                + " steps in turn, and are locked before anyone works in or under the body.")
                .forEach(flow::paragraph);
        return flow.pages();
    }

    private void plan(LiftPlan made) {
        flow.heading("Sling");
        flow.paragraph(
                "Four legs to one hook straight above the centre of mass, the legs made long or short so that the body"
                        + " hangs level. Each leg is taken to bear the greater of its share among four and its share if it and"
                        + " the one across bore all alone, times the factor for the jerk of the crane; the centre of mass lies"
                        + " anywhere in its range. Angles are above the level.");
        flow.pair("Mass", Numerals.of(made.massKg(), 0) + Numerals.GAP + "kg, " + made.state());
        flow.pair(
                "Centre of mass",
                "x " + range(made.lowX(), made.highX()) + ", y " + range(made.lowY(), made.highY()) + ", z up to "
                        + mm(made.highZ()) + " mm");
        Double allowed = made.allowedM();
        flow.pair(
                "Offset from the middle of the eyes",
                "up to " + mm(made.offM()) + " mm"
                        + (allowed == null ? "" : "; the eyes would bear up to " + mm(allowed) + " mm that way"));
        flow.pair("Tilt on four equal legs", Numerals.of(made.tilt(), 1) + "°");
        flow.gap(2);
        Columns columns = new Columns(typeface, LEGS);
        columns.head(flow);
        for (Leg leg : made.legs()) {
            Double rating = leg.eye().ratingN();
            boolean meets = leg.forceN() < Double.MAX_VALUE;
            columns.row(
                    flow,
                    List.of(
                            leg.eye().name(),
                            Numerals.of(100 * leg.share(), 1),
                            Numerals.of(leg.angle(), 1),
                            mm(leg.lengthM()),
                            meets ? Numerals.of(leg.forceN(), 0) : "does not meet",
                            rating == null ? "?" : Numerals.of(rating, 0),
                            rating == null || !meets ? "?" : Numerals.of(leg.forceN() / rating, 2)),
                    false);
        }
        flow.need(SKETCH + 14);
        flow.heading("Sketch");
        flow.add(
                SKETCH,
                top -> new LiftSketch(
                                made, issue.body().outside(), new Bounds(flow.left(), top, flow.right(), top + SKETCH))
                        .shapes());
    }

    private static String range(double low, double high) {
        return mm(low) + " to " + mm(high);
    }

    private static String mm(double metres) {
        return Numerals.of(1000 * metres, 0);
    }
}
