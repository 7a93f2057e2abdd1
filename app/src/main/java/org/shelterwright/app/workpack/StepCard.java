package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
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
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.handling.Handling;

/** One step on paper. Not for several threads. */
final class StepCard {
    private static final double LEFT = CardChecks.LEFT;
    private static final double RIGHT = CardChecks.RIGHT;
    private static final double TOP = 29;
    private static final double PAD = CardChecks.PAD;
    private static final double SPACE = 4;
    private static final double LOWEST = 281.5;
    /** A rack with more pieces is filled by the list at the front. */
    private static final int MOST_PIECES = 4;

    private static final double FOOT = 286;
    private static final double FOOT_WIDTH = 145;
    private static final Pen SOFT = Pen.of(0.2, Role.LINES.colour());

    private final Typeface typeface;
    private final PackHead head;
    private final BoltDownPlan plan;
    private final StepScenes scenes;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Drawing> sheets = new ArrayList<>();
    private Setting setting = Setting.LOOSE;

    StepCard(Typeface typeface, PackHead head, BoltDownPlan plan, StepScenes scenes) {
        this.typeface = typeface;
        this.head = head;
        this.plan = plan;
        this.scenes = scenes;
    }

    /**
     * The sheets of a step: one, with a lower picture or set closer where that is enough, or more where there is much to
     * connect and to check.
     */
    List<Drawing> drawings(BoltDownStep step, String who) {
        sheets.clear();
        for (Setting one : List.of(Setting.LOOSE, Setting.TIGHT)) {
            setting = one;
            double height = Math.min(StepPicture.HEIGHT, StepPicture.HEIGHT + LOWEST - ends(step, who));
            if (height >= one.least()) {
                return sheets(step, who, height);
            }
        }
        setting = Setting.LOOSE;
        return sheets(step, who, StepPicture.HEIGHT);
    }

    /** Where all would end on one sheet without end, below a picture of full height. */
    private double ends(BoltDownStep step, String who) {
        shapes.clear();
        double y = cables(step, who, upper(step, StepPicture.HEIGHT), Double.POSITIVE_INFINITY);
        return checks(step, y + setting.gap());
    }

    private List<Drawing> sheets(BoltDownStep step, String who, double height) {
        begin(step, who);
        scenes.picture(step, height).shapes().forEach(shape -> shapes.add(shape.moved(LEFT, TOP)));
        double y = cables(step, who, upper(step, height), LOWEST);
        int before = shapes.size();
        if (checks(step, y + setting.gap()) > LOWEST + 0.01) {
            shapes.subList(before, shapes.size()).clear();
            end(step);
            y = begin(step, who);
            checks(step, y + setting.gap());
        }
        end(step);
        return List.copyOf(sheets);
    }

    /** What stands between the picture and the cables; gives where the cables begin. */
    private double upper(BoltDownStep step, double height) {
        double y = way(step, TOP + height + 2);
        y = cautions(step, y + 1);
        y = cards(step, y + setting.gap());
        return holes(step, y) + setting.gap();
    }

    private double checks(BoltDownStep step, double top) {
        return new CardChecks(typeface, setting, shapes).box(step, top);
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

    private double cables(BoltDownStep step, String who, double top, double lowest) {
        List<String> fittings = StepWords.fittings(step, MOST_PIECES);
        List<String> tasks = new ArrayList<>(fittings);
        step.cables().stream().map(CableTask::text).forEach(tasks::add);
        if (tasks.isEmpty()) {
            return top - setting.gap();
        }
        String connect = "onnect, with a label on each end";
        String title = fittings.isEmpty() ? "C" + connect : step.cables().isEmpty() ? "Fit" : "Fit and c" + connect;
        shapes.add(Lettering.bold(title, new Spot(LEFT, top + 3), 2.6));
        double y = top + 5;
        double half = (RIGHT - LEFT - SPACE) / 2;
        for (List<String> row : TaskRows.of(tasks, typeface, setting, half - 5)) {
            if (y + 2 * setting.line() > lowest) {
                end(step);
                y = begin(step, who) + setting.gap();
            }
            double end = y;
            for (int c = 0; c < row.size(); c++) {
                double width = row.size() == 1 ? RIGHT - LEFT : half;
                end = Math.max(end, task(row.get(c), LEFT + c * (half + SPACE), y, width));
            }
            y = end + 0.3;
            shapes.add(Lines.of(Pen.of(0.13, Role.LINE.colour()), new Spot(LEFT, y), new Spot(RIGHT, y)));
            y += 0.3;
        }
        return y;
    }

    private double task(String text, double x, double y, double width) {
        shapes.add(Polygon.of(new Bounds(x, y + 0.7, x + 3, y + 3.7), Role.RAISED.colour(), SOFT));
        return Math.max(y + 4.1, paragraph(text, x + 5, y, width - 5, Weight.REGULAR));
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
        double width = (RIGHT - LEFT - 2 * SPACE) / 3;
        int first = shapes.size();
        double end = lift(step, LEFT + PAD, top + PAD, width - 2 * PAD);
        end = Math.max(end, bolt(step, LEFT + width + SPACE + PAD, top + PAD, width - 2 * PAD));
        end = Math.max(end, torque(step, LEFT + 2 * (width + SPACE) + PAD, top + PAD, width - 2 * PAD));
        for (int i = 2; i >= 0; i--) {
            double x = LEFT + i * (width + SPACE);
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
        shapes.add(Lettering.muted(BoltPattern.seen(step), new Spot(x + width, top + 3), 1.7)
                .with(Align.END));
        for (Bolting one : step.boltings()) {
            y = paragraph(one.text() + ", washers", x, y, width, Weight.MEDIUM);
        }
        shapes.addAll(BoltPattern.shapes(step, new Bounds(x, y + 1, x + width, y + 1 + setting.pattern())));
        return y + 2 + setting.pattern();
    }

    /** Where each fixing goes and what tools are needed, over the full width. */
    private double holes(BoltDownStep step, double top) {
        double tools = paragraph(
                "Tools:  " + String.join(", ", step.tools()) + ".", LEFT, top + 1, RIGHT - LEFT, Weight.REGULAR);
        if (step.boltings().isEmpty()) {
            return tools;
        }
        String holes = "Holes:  " + StepWords.holes(step.boltings()) + ".  " + StepWords.counting(step);
        return paragraph(holes.strip(), LEFT, tools + 0.5, RIGHT - LEFT, Weight.REGULAR);
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
        return y;
    }

    private double figure(String word, double value, double x, double top) {
        shapes.add(Lettering.muted(word, new Spot(x, top + 6), setting.text()));
        shapes.add(Lettering.bold(Numerals.short3(value) + " N·m", new Spot(x + 12, top + 6), 4));
        return top + 8;
    }

    private double paragraph(String text, double x, double top, double width, Weight weight) {
        return setting.paragraph(shapes, typeface, text, x, top, width, weight);
    }
}
