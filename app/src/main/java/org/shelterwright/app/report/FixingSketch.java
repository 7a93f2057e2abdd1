package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Group;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Line;

/**
 * The mounting plane of a unit: its outline, what touches, its fixings with pull and shear under the governing push, and the push
 * at the centre of mass. Not to scale between units.
 */
final class FixingSketch {
    private static final double TEXT = 1.8;
    private static final double LONGEST_ARROW = 8;
    private static final double MARGIN = 11;

    private final Group group;
    private final Bounds paper;
    private final double scale;
    private final double middleS;
    private final double middleT;
    private final List<Shape> shapes = new ArrayList<>();
    private Bounds frame;

    FixingSketch(Group group, Bounds paper) {
        this.group = group;
        this.paper = paper;
        this.frame = paper;
        var low = group.outline().get(0);
        var high = group.outline().get(1);
        double width = Math.max(0.01, high.s() - low.s());
        double height = Math.max(0.01, high.t() - low.t());
        scale = Math.min((paper.width() - 2 * MARGIN) / width, (paper.height() - 2 * MARGIN) / height);
        middleS = (low.s() + high.s()) / 2;
        middleT = (low.t() + high.t()) / 2;
    }

    List<Shape> shapes() {
        var low = group.outline().get(0);
        var high = group.outline().get(1);
        Spot a = on(low.s(), low.t());
        Spot b = on(high.s(), high.t());
        frame = new Bounds(a.x(), b.y(), b.x(), a.y());
        shapes.add(Polygon.of(frame, Role.PANEL.colour(), Pen.of(0.35, Role.TEXT.colour())));
        if (!group.contact().isEmpty()) {
            List<Spot> corners =
                    group.contact().stream().map(c -> on(c.s(), c.t())).toList();
            shapes.add(
                    new Polygon(corners, null, Pen.of(0.18, Role.LINES.colour()).with(LineType.DASHED)));
        }
        push();
        double largest = group.fixings().stream()
                .mapToDouble(line -> Math.hypot(
                        line.governingShear().s(), line.governingShear().t()))
                .max()
                .orElse(0);
        group.fixings().forEach(line -> fixing(line, largest));
        return shapes;
    }

    private void fixing(Line line, double largestN) {
        var at = line.at();
        if (at == null) {
            return;
        }
        Spot spot = on(at.s(), at.t());
        boolean pulls = line.governingPullN() >= 0.5;
        Spot tip = spot;
        if (largestN > 0) {
            // The arrow shows the load on the bolt, which points the way the unit is pushed.
            double per = LONGEST_ARROW / largestN;
            tip = spot.plus(
                    per * line.governingShear().s(),
                    -per * line.governingShear().t());
            arrow(spot, tip, Pen.of(0.3, Role.ACCENT.colour()));
        }
        shapes.add(new Circle(
                spot, 1.1, pulls ? Role.TEXT.colour() : Role.RAISED.colour(), Pen.of(0.3, Role.TEXT.colour())));
        String pull = pulls ? " " + Numerals.of(line.governingPullN(), 0) : "";
        shapes.add(label(line.name() + pull, spot, tip));
    }

    /** The text beyond the edge that is nearest to the bolt, clear of its arrow. */
    private Label label(String text, Spot spot, Spot tip) {
        double toLeft = spot.x() - frame.x0();
        double toRight = frame.x1() - spot.x();
        double toTop = spot.y() - frame.y0();
        double toBottom = frame.y1() - spot.y();
        double sideways = Math.min(toLeft, toRight);
        if (sideways <= Math.min(toTop, toBottom) + 1e-6) {
            double x = toLeft < toRight ? Math.min(frame.x0(), tip.x()) - 1.6 : Math.max(frame.x1(), tip.x()) + 1.6;
            return Lettering.of(text, new Spot(x, spot.y() + 0.9), TEXT)
                    .with(toLeft < toRight ? Align.END : Align.START);
        }
        double y = toTop < toBottom ? Math.min(frame.y0(), tip.y()) - 1.4 : Math.max(frame.y1(), tip.y()) + 3.2;
        return Lettering.of(text, new Spot(spot.x(), y), TEXT).with(Align.MIDDLE);
    }

    private void push() {
        Spot centre = on(group.centre().s(), group.centre().t());
        Pen pen = Pen.of(0.25, Role.TEXT.colour());
        shapes.add(new Circle(centre, 1.4, null, pen));
        shapes.add(Lines.of(pen, centre.plus(-2.2, 0), centre.plus(2.2, 0)));
        shapes.add(Lines.of(pen, centre.plus(0, -2.2), centre.plus(0, 2.2)));
        var push = group.push();
        if (push == null) {
            return;
        }
        double size = Math.hypot(push.s(), push.t());
        if (size > 1e-9) {
            Spot tip = centre.plus(11 * push.s() / size, -11 * push.t() / size);
            arrow(centre, tip, Pen.of(0.6, Role.TEXT.colour()));
        }
    }

    private void arrow(Spot from, Spot to, Pen pen) {
        double length = from.distance(to);
        if (length < 0.3) {
            return;
        }
        double ux = (to.x() - from.x()) / length;
        double uy = (to.y() - from.y()) / length;
        double head = Math.min(1.8, length / 2);
        shapes.add(Lines.of(pen, from, to));
        shapes.add(new Polygon(
                List.of(
                        to,
                        to.plus(-head * ux + head * uy / 2.5, -head * uy - head * ux / 2.5),
                        to.plus(-head * ux - head * uy / 2.5, -head * uy + head * ux / 2.5)),
                pen.colour(),
                null));
    }

    private Spot on(double s, double t) {
        return new Spot(
                paper.centre().x() + scale * (s - middleS), paper.centre().y() - scale * (t - middleT));
    }
}
