package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.boltdown.StepCheck.Kind;

/** The box at the foot of a card: what to check, with fields for what was measured, and who signs. */
final class CardChecks {
    static final double LEFT = 15;
    static final double RIGHT = 195;
    static final double PAD = 3.5;

    /** So many tests that are alike stand as one. */
    private static final int MANY = 3;

    private static final Pen FRAME = Pen.of(0.35, Role.TEXT.colour());
    private static final Pen SOFT = Pen.of(0.2, Role.LINES.colour());

    private final Typeface typeface;
    private final Setting setting;
    private final List<Shape> shapes;

    /** @param shapes to which the box is added */
    CardChecks(Typeface typeface, Setting setting, List<Shape> shapes) {
        this.typeface = typeface;
        this.setting = setting;
        this.shapes = shapes;
    }

    /** Draws the box; gives where it ends (mm). */
    double box(BoltDownStep step, double top) {
        shapes.add(Lettering.bold("Check and sign", new Spot(LEFT + PAD, top + 6), 2.6));
        double y = top + 9;
        double half = (RIGHT - LEFT) / 2;
        List<StepCheck> checks = gathered(step.checks());
        for (int i = 0; i < checks.size(); i += 2) {
            double end = check(checks.get(i), LEFT + PAD, y, half - PAD);
            if (i + 1 < checks.size()) {
                end = Math.max(end, check(checks.get(i + 1), LEFT + half, y, half - PAD));
            }
            y = end;
        }
        String hold = step.hold();
        if (hold != null) {
            y = setting.paragraph(shapes, typeface, hold, LEFT + PAD, y + 1, RIGHT - LEFT - 2 * PAD, Weight.SEMIBOLD);
        }
        y += 8;
        shapes.add(Lettering.muted("Name, date, time", new Spot(LEFT + PAD, y), setting.text()));
        shapes.add(Lines.of(SOFT, new Spot(LEFT + PAD + 26, y), new Spot(LEFT + 88, y)));
        if (!step.boltings().isEmpty()) {
            shapes.add(Lettering.muted("Wrench no., calibrated until", new Spot(LEFT + 92, y), setting.text()));
            shapes.add(Lines.of(SOFT, new Spot(LEFT + 131, y), new Spot(RIGHT - PAD, y)));
        }
        if (hold != null) {
            y += 8;
            shapes.add(Lettering.muted("Released by", new Spot(LEFT + PAD, y), setting.text()));
            shapes.add(Lines.of(SOFT, new Spot(LEFT + PAD + 26, y), new Spot(LEFT + 88, y)));
        }
        y += 4;
        shapes.add(Polygon.of(new Bounds(LEFT, top, RIGHT, y), null, FRAME));
        return y;
    }

    /** Tests of many wires stand as one where they are tested alike: each wire has its own box where it is connected. */
    private static List<StepCheck> gathered(List<StepCheck> checks) {
        List<StepCheck> gathered = new ArrayList<>();
        for (StepCheck check : checks) {
            List<StepCheck> alike = checks.stream()
                    .filter(one -> one.kind() == Kind.TEST
                            && one.kind() == check.kind()
                            && one.hint().equals(check.hint()))
                    .toList();
            if (alike.size() < MANY) {
                gathered.add(check);
            } else if (alike.get(0).equals(check)) {
                String wires = alike.stream()
                        .map(one -> one.text().substring(0, one.text().indexOf(' ')))
                        .collect(Collectors.joining(", "));
                gathered.add(new StepCheck(
                        check.id(),
                        check.kind(),
                        wires + check.text().substring(check.text().indexOf(' ')),
                        check.hint(),
                        null,
                        "",
                        0));
            }
        }
        return gathered;
    }

    private double check(StepCheck check, double x, double top, double width) {
        shapes.add(Polygon.of(new Bounds(x, top, x + 5.5, top + 5.5), Role.RAISED.colour(), FRAME));
        boolean measured = check.expected() != null;
        double text = width - 9 - (measured ? 24 : 0);
        double y = setting.paragraph(shapes, typeface, check.text(), x + 8, top - 0.6, text, Weight.SEMIBOLD);
        y = setting.paragraph(shapes, typeface, check.hint(), x + 8, y - 0.4, text, Weight.REGULAR);
        if (measured) {
            Bounds field = new Bounds(x + width - 24, top, x + width - 3, top + 6.5);
            shapes.add(Polygon.of(field, Role.RAISED.colour(), SOFT));
            shapes.add(Lettering.muted(check.unit(), new Spot(field.x1() - 1.2, field.y1() - 2), 1.8)
                    .with(Align.END));
        }
        return Math.max(y, top + 7.5) + 0.8;
    }
}
