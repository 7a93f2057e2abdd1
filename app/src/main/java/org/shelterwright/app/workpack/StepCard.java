package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.app.view.StepPicture;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.boltdown.CableTask;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.handling.Handling;

/** One step on paper. Not for several threads. */
final class StepCard {
    private static final double LEFT = 15;
    private static final double RIGHT = 195;
    private static final double TEXT = 2.0;
    private static final double LINE = 4.3;
    private static final double GAP = 4;
    private static final double PAD = 3.5;
    private static final double LOWEST = 281.5;
    private static final double FOOT = 286;
    private static final double FOOT_WIDTH = 145;
    private static final Pen FRAME = Pen.of(0.35, Role.TEXT.colour());
    private static final Pen SOFT = Pen.of(0.2, Role.LINES.colour());

    private final Typeface typeface;
    private final PackHead head;
    private final BoltDownPlan plan;
    private final StepScenes scenes;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Drawing> sheets = new ArrayList<>();

    StepCard(Typeface typeface, PackHead head, BoltDownPlan plan, StepScenes scenes) {
        this.typeface = typeface;
        this.head = head;
        this.plan = plan;
        this.scenes = scenes;
    }

    /** The sheets of a step: one, or more where there is much to connect and to check. */
    List<Drawing> drawings(BoltDownStep step, String who) {
        sheets.clear();
        begin(step, who);
        scenes.picture(step).shapes().forEach(shape -> shapes.add(shape.moved(LEFT, 29)));
        double y = 29 + StepPicture.HEIGHT + 2;
        y = way(step, y);
        y = cautions(step, y + 1);
        y = cards(step, y + GAP);
        y = holes(step, y);
        y = cables(step, who, y + GAP);
        int before = shapes.size();
        if (checks(step, y + GAP) > LOWEST) {
            shapes.subList(before, shapes.size()).clear();
            end(step);
            y = begin(step, who);
            checks(step, y + GAP);
        }
        end(step);
        return List.copyOf(sheets);
    }

    /** Begins a sheet; gives where its content begins. */
    private double begin(BoltDownStep step, String who) {
        shapes.clear();
        String title = step.unit().name() + (step.boltings().isEmpty() ? " in" : " in and bolted down");
        shapes.add(Lettering.muted(head.name() + ", work pack", new Spot(LEFT, 15), 2.2));
        String number = "Step " + step.number() + " of " + plan.steps().size() + (sheets.isEmpty() ? "" : ", further");
        shapes.add(Lettering.bold(number, new Spot(LEFT, 23), 4));
        shapes.add(Lettering.muted(who + ", about " + Numerals.of(step.minutes(), 0) + " min", new Spot(RIGHT, 15), 2.2)
                .with(Align.END));
        String shown = new Wrap(typeface, Typeface.sizeOf(3.6), Weight.SEMIBOLD).shortened(title, 108);
        shapes.add(Lettering.bold(shown, new Spot(RIGHT, 23), 3.6).with(Align.END));
        shapes.add(Lines.of(Pen.of(0.6, Role.TEXT.colour()), new Spot(LEFT, 26), new Spot(RIGHT, 26)));
        return 28;
    }

    private void end(BoltDownStep step) {
        double y = FOOT;
        for (String line : new Wrap(typeface, Typeface.sizeOf(1.7), Weight.REGULAR).lines(head.foot(), FOOT_WIDTH)) {
            shapes.add(Lettering.muted(line, new Spot(LEFT, y), 1.7));
            y += 3;
        }
        shapes.add(Lettering.muted("layout " + head.id() + ", step " + step.number(), new Spot(RIGHT, FOOT), 1.7)
                .with(Align.END));
        sheets.add(
                new Drawing("Step " + step.number(), SheetSize.A4.width(), SheetSize.A4.height(), List.copyOf(shapes)));
    }

    private double cables(BoltDownStep step, String who, double top) {
        List<String> fittings = StepWords.fittings(step);
        List<String> tasks = new ArrayList<>(fittings);
        step.cables().stream().map(CableTask::text).forEach(tasks::add);
        if (tasks.isEmpty()) {
            return top - GAP;
        }
        String title = fittings.isEmpty() ? "Connect" : step.cables().isEmpty() ? "Fit" : "Fit and connect";
        shapes.add(Lettering.bold(title, new Spot(LEFT, top + 3), 2.6));
        double y = top + 5;
        for (String task : tasks) {
            if (y + 2 * LINE > LOWEST) {
                end(step);
                y = begin(step, who) + GAP;
            }
            shapes.add(Polygon.of(new Bounds(LEFT, y + 0.7, LEFT + 3, y + 3.7), Role.RAISED.colour(), SOFT));
            y = paragraph(task, LEFT + 5, y, RIGHT - LEFT - 5, Weight.REGULAR);
            shapes.add(Lines.of(Pen.of(0.13, Role.LINE.colour()), new Spot(LEFT, y + 0.3), new Spot(RIGHT, y + 0.3)));
            y += 0.6;
        }
        return y;
    }

    private double way(BoltDownStep step, double top) {
        List<String> moves = StepWords.way(step.passage());
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < moves.size(); i++) {
            text.append(i == 0 ? "" : ";  ")
                    .append((char) ('a' + i))
                    .append("\u2009 ")
                    .append(moves.get(i));
        }
        double y = paragraph(text.toString(), LEFT, top, RIGHT - LEFT, Weight.MEDIUM);
        y = paragraph(StepWords.set(step), LEFT, y, RIGHT - LEFT, Weight.SEMIBOLD);
        shapes.add(Lettering.muted(
                "Ringed numbers are the steps of what is in already; lengths in mm.", new Spot(LEFT, y + 2.6), 1.7));
        return y + 3;
    }

    private double cautions(BoltDownStep step, double top) {
        if (step.cautions().isEmpty()) {
            return top;
        }
        double y = top + 1;
        int first = shapes.size();
        y = paragraph("Caution", LEFT + PAD, y, RIGHT - LEFT - 2 * PAD, Weight.SEMIBOLD);
        for (String caution : step.cautions()) {
            y = paragraph(caution, LEFT + PAD, y, RIGHT - LEFT - 2 * PAD, Weight.REGULAR);
        }
        shapes.add(
                first,
                Polygon.of(
                        new Bounds(LEFT, top, RIGHT, y + 1.5),
                        Role.BROKEN_WASH.colour(),
                        Pen.of(0.5, Role.BROKEN.colour())));
        return y + 1.5;
    }

    private double cards(BoltDownStep step, double top) {
        double width = (RIGHT - LEFT - 2 * GAP) / 3;
        int first = shapes.size();
        double end = lift(step, LEFT + PAD, top + PAD, width - 2 * PAD);
        end = Math.max(end, bolt(step, LEFT + width + GAP + PAD, top + PAD, width - 2 * PAD));
        end = Math.max(end, torque(step, LEFT + 2 * (width + GAP) + PAD, top + PAD, width - 2 * PAD));
        for (int i = 2; i >= 0; i--) {
            double x = LEFT + i * (width + GAP);
            shapes.add(first, Polygon.of(new Bounds(x, top, x + width, end + PAD), Role.PANEL.colour(), SOFT));
        }
        return end + PAD;
    }

    private double lift(BoltDownStep step, double x, double top, double width) {
        shapes.add(Lettering.bold("Lift", new Spot(x, top + 3), 2.6));
        Handling handling = step.handling();
        String mass = handling == null ? "mass not known" : "up to " + Numerals.short3(handling.massKg()) + " kg";
        shapes.add(Lettering.bold(mass, new Spot(x, top + 10.5), 4));
        double y = top + 13;
        return handling == null ? y : paragraph(StepWords.handling(handling) + ".", x, y, width, Weight.REGULAR);
    }

    private double bolt(BoltDownStep step, double x, double top, double width) {
        shapes.add(Lettering.bold("Bolt", new Spot(x, top + 3), 2.6));
        double y = top + 5;
        if (step.boltings().isEmpty()) {
            return paragraph("Loose: it is only set down.", x, y, width, Weight.REGULAR);
        }
        for (Bolting one : step.boltings()) {
            y = paragraph(one.text() + ", washer under each head", x, y, width, Weight.MEDIUM);
        }
        shapes.addAll(BoltPattern.shapes(step, new Bounds(x, y + 1, x + width, y + 21)));
        return y + 22;
    }

    /** Where each fixing goes, over the full width. */
    private double holes(BoltDownStep step, double top) {
        if (step.boltings().isEmpty()) {
            return top;
        }
        String holes = "Holes:  " + StepWords.holes(step.boltings()) + ".  " + StepWords.counting(step);
        return paragraph(holes.strip(), LEFT, top + 1, RIGHT - LEFT, Weight.REGULAR);
    }

    private double torque(BoltDownStep step, double x, double top, double width) {
        shapes.add(Lettering.bold("Torque", new Spot(x, top + 3), 2.6));
        double y = top + 5;
        if (step.boltings().isEmpty()) {
            y = paragraph("None.", x, y, width, Weight.REGULAR);
        }
        for (Bolting one : step.boltings()) {
            Double first = one.firstNm();
            Double last = one.finalNm();
            if (step.boltings().size() > 1) {
                y = paragraph(one.text(), x, y, width, Weight.REGULAR);
            }
            if (last == null) {
                y = paragraph("Not known: " + one.missing(), x, y, width, Weight.REGULAR);
                continue;
            }
            if (first != null) {
                y = figure("first", first, x, y);
            }
            y = figure("then", last, x, y);
        }
        return step.tools().isEmpty()
                ? y
                : paragraph("Tools: " + String.join(", ", step.tools()), x, y + 1, width, Weight.REGULAR);
    }

    private double figure(String word, double value, double x, double top) {
        shapes.add(Lettering.muted(word, new Spot(x, top + 6), TEXT));
        shapes.add(Lettering.bold(Numerals.short3(value) + " N·m", new Spot(x + 12, top + 6), 4));
        return top + 8;
    }

    private double checks(BoltDownStep step, double top) {
        shapes.add(Lettering.bold("Check and sign", new Spot(LEFT + PAD, top + 6), 2.6));
        double y = top + 9;
        double half = (RIGHT - LEFT) / 2;
        for (int i = 0; i < step.checks().size(); i += 2) {
            double end = check(step.checks().get(i), LEFT + PAD, y, half - PAD);
            if (i + 1 < step.checks().size()) {
                end = Math.max(end, check(step.checks().get(i + 1), LEFT + half, y, half - PAD));
            }
            y = end;
        }
        String hold = step.hold();
        if (hold != null) {
            y = paragraph(hold, LEFT + PAD, y + 1, RIGHT - LEFT - 2 * PAD, Weight.SEMIBOLD);
        }
        y += 8;
        shapes.add(Lettering.muted("Name, date, time", new Spot(LEFT + PAD, y), TEXT));
        shapes.add(Lines.of(SOFT, new Spot(LEFT + PAD + 26, y), new Spot(LEFT + 88, y)));
        if (!step.boltings().isEmpty()) {
            shapes.add(Lettering.muted("Wrench no., calibrated until", new Spot(LEFT + 92, y), TEXT));
            shapes.add(Lines.of(SOFT, new Spot(LEFT + 131, y), new Spot(RIGHT - PAD, y)));
        }
        if (hold != null) {
            y += 8;
            shapes.add(Lettering.muted("Released by", new Spot(LEFT + PAD, y), TEXT));
            shapes.add(Lines.of(SOFT, new Spot(LEFT + PAD + 26, y), new Spot(LEFT + 88, y)));
        }
        y += 4;
        shapes.add(Polygon.of(new Bounds(LEFT, top, RIGHT, y), null, FRAME));
        return y;
    }

    private double check(StepCheck check, double x, double top, double width) {
        shapes.add(Polygon.of(new Bounds(x, top, x + 5.5, top + 5.5), Role.RAISED.colour(), FRAME));
        boolean measured = check.expected() != null;
        double text = width - 9 - (measured ? 24 : 0);
        double y = paragraph(check.text(), x + 8, top - 0.6, text, Weight.SEMIBOLD);
        y = paragraph(check.hint(), x + 8, y - 0.4, text, Weight.REGULAR);
        if (measured) {
            Bounds field = new Bounds(x + width - 24, top, x + width - 3, top + 6.5);
            shapes.add(Polygon.of(field, Role.RAISED.colour(), SOFT));
            shapes.add(Lettering.muted(check.unit(), new Spot(field.x1() - 1.2, field.y1() - 2), 1.8)
                    .with(Align.END));
        }
        return Math.max(y, top + 7.5) + 0.8;
    }

    private double paragraph(String text, double x, double top, double width, Weight weight) {
        double y = top;
        for (String line : new Wrap(typeface, Typeface.sizeOf(TEXT), weight).lines(text, width)) {
            Label label = Lettering.of(line, new Spot(x, y + 3.2), TEXT).with(weight);
            shapes.add(label);
            y += LINE;
        }
        return y;
    }
}
