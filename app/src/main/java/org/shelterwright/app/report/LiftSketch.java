package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
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
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.lifting.LiftPlan;
import org.shelterwright.layouts.ledger.lifting.LiftPlan.Leg;

/** The lifted body from its right side and from above, to one scale: sling, hook, range of the centre of mass. */
final class LiftSketch {
    private static final double TEXT = 2;
    private static final double GAP = 14;

    private final LiftPlan plan;
    private final Box outside;
    private final Bounds paper;
    private final double scale;
    private final double left;
    private final List<Shape> shapes = new ArrayList<>();

    LiftSketch(LiftPlan plan, Box outside, Bounds paper) {
        this.plan = plan;
        this.outside = outside;
        this.paper = paper;
        double tall = top() - m(outside.z0()) + m(outside.y1()) - m(outside.y0());
        double wide = m(outside.x1()) - m(outside.x0());
        scale = Math.min((paper.width() - 40) / wide, (paper.height() - GAP - 8) / tall);
        left = paper.centre().x() - scale * wide / 2;
    }

    List<Shape> shapes() {
        side();
        plan();
        return shapes;
    }

    private void side() {
        Pen outline = Pen.of(0.35, Role.TEXT.colour());
        shapes.add(Polygon.of(
                new Bounds(x(m(outside.x0())), z(m(outside.z1())), x(m(outside.x1())), z(m(outside.z0()))),
                Role.PANEL.colour(),
                outline));
        Spot hook = new Spot(x(middleX()), z(top()));
        for (Leg leg : plan.legs()) {
            Spot eye = new Spot(x(m(leg.eye().at().x())), z(m(leg.eye().at().z())));
            shapes.add(Lines.of(Pen.of(0.25, Role.ACCENT.colour()), hook, eye));
            shapes.add(new Circle(eye, 0.9, Role.RAISED.colour(), outline));
        }
        shapes.add(new Circle(hook, 1.2, Role.TEXT.colour(), null));
        shapes.add(Lettering.of("hook, " + mm(plan.hookHeight()) + " above the eyes", hook.plus(3, 0.8), TEXT));
        Spot centre = new Spot(x(middleX()), z(plan.highZ()));
        shapes.add(Lines.of(Pen.of(0.18, Role.TEXT.colour()).with(LineType.LONG_DASH_DOUBLE_DOT), hook, centre));
        cross(centre);
        Spot beside = new Spot(x(m(outside.x1())) + 4, centre.y());
        shapes.add(Lines.of(Pen.of(0.13, Role.LINES.colour()), centre.plus(2.6, 0), beside.plus(-1, 0)));
        shapes.add(Lettering.of("centre of mass, up to", beside.plus(0, -0.6), TEXT));
        shapes.add(Lettering.of(mm(plan.highZ()) + " above the floor", beside.plus(0, 3.2), TEXT));
        shapes.add(Lettering.muted(
                "from the right side, front to the right", new Spot(left, z(m(outside.z0())) + 4), TEXT));
    }

    private void plan() {
        Pen outline = Pen.of(0.35, Role.TEXT.colour());
        shapes.add(Polygon.of(
                new Bounds(x(m(outside.x0())), y(m(outside.y1())), x(m(outside.x1())), y(m(outside.y0()))),
                Role.PANEL.colour(),
                outline));
        Spot hook = new Spot(x(middleX()), y((plan.lowY() + plan.highY()) / 2));
        for (Leg leg : plan.legs()) {
            Spot eye = new Spot(x(m(leg.eye().at().x())), y(m(leg.eye().at().y())));
            shapes.add(Lines.of(Pen.of(0.25, Role.ACCENT.colour()), hook, eye));
            shapes.add(new Circle(eye, 0.9, Role.RAISED.colour(), outline));
            boolean rear = eye.x() < hook.x();
            shapes.add(Lettering.of(
                            Numerals.of(leg.forceN() / 1000, 1) + Numerals.GAP + "kN",
                            eye.plus(rear ? -2.5 : 2.5, 0.8),
                            TEXT)
                    .with(rear ? Align.END : Align.START));
        }
        shapes.add(Polygon.of(
                new Bounds(x(plan.lowX()), y(plan.highY()), x(plan.highX()), y(plan.lowY())),
                null,
                Pen.of(0.25, Role.TEXT.colour())));
        cross(hook);
        shapes.add(Lettering.muted(
                "from above, front to the right; box: range of the centre of mass",
                new Spot(left, y(m(outside.y0())) + 4),
                TEXT));
    }

    private void cross(Spot at) {
        Pen pen = Pen.of(0.25, Role.TEXT.colour());
        shapes.add(new Circle(at, 1.4, null, pen));
        shapes.add(Lines.of(pen, at.plus(-2.2, 0), at.plus(2.2, 0)));
        shapes.add(Lines.of(pen, at.plus(0, -2.2), at.plus(0, 2.2)));
    }

    private double middleX() {
        return (plan.lowX() + plan.highX()) / 2;
    }

    private double top() {
        return m(plan.legs().get(0).eye().at().z()) + plan.hookHeight();
    }

    private double x(double metres) {
        return left + scale * (metres - m(outside.x0()));
    }

    private double z(double metres) {
        return paper.y0() + 3 + scale * (top() - metres);
    }

    private double y(double metres) {
        return z(m(outside.z0())) + GAP + scale * (m(outside.y1()) - metres);
    }

    private static double m(int micrometres) {
        return Lengths.metres(micrometres);
    }

    private static String mm(double metres) {
        return Numerals.of(1000 * metres, 0) + Numerals.GAP + "mm";
    }
}
