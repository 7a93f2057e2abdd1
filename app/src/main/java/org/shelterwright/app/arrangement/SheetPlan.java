package org.shelterwright.app.arrangement;

import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.sheet.TitleBlock;
import org.shelterwright.app.view.Aspect;
import org.shelterwright.app.view.DoorSwing;
import org.shelterwright.app.view.Sheeted;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * Where the views of a body lie on a sheet, at which scale. The view from the right is the principal one; in first-angle
 * projection the view from the rear lies at its right and the view from above under it.
 *
 * @param listBeside whether the parts list stands beside the views; otherwise it has a sheet of its own
 */
record SheetPlan(
        SheetSize size,
        int scale,
        boolean listBeside,
        Sheeted fromRight,
        Sheeted fromRear,
        Sheeted fromAbove,
        Sheeted section,
        Sheeted fromLeft) {

    private static final int[] SCALES = {10, 20, 25, 50, 100};

    /** Room above a view for its name (mm). */
    static final double NAME = 7;

    /** Room for running dimensions (mm). */
    static final double DIMENSIONS = 19;

    /** How much nearer dimensions stand to a swing than to a wall (mm). */
    static final double SAVED = 4;

    /** Distance of the parts list from the frame, beyond the centring mark (mm). */
    static final double LIST_INSET = 6;

    private static final double GAP = 8;
    private static final double LEAST_GAP = 3;

    /** The largest scale at which all fits A3 or A2; the parts list goes to a second sheet before the scale goes down. */
    static SheetPlan of(Body body, int units) {
        for (int scale : SCALES) {
            for (SheetSize size : new SheetSize[] {SheetSize.A3, SheetSize.A2}) {
                for (boolean beside : new boolean[] {true, false}) {
                    Measure measure = new Measure(body, scale);
                    if (measure.fits(size, beside, units)) {
                        return measure.plan(size, beside);
                    }
                }
            }
        }
        throw new IllegalArgumentException("The body " + body.id()
                + " is too large for a general arrangement drawing: at 1:" + SCALES[SCALES.length - 1]
                + " it does not fit a sheet of A2. Its outside must be shorter than about 25 m.");
    }

    /** The views' sizes on paper (mm). */
    private record Measure(Body body, int scale, double length, double width, double height) {

        Measure(Body body, int scale) {
            this(
                    body,
                    scale,
                    paper(body.outside().x1() - body.outside().x0(), scale),
                    paper(body.outside().y1() - body.outside().y0(), scale),
                    paper(body.outside().z1() - body.outside().z0(), scale));
        }

        boolean fits(SheetSize size, boolean beside, int units) {
            Bounds space = size.space();
            boolean tall = rows() <= space.height();
            boolean listFits = !beside
                    || columns() + GAP + PartsList.WIDTH + LIST_INSET <= space.width()
                            && PartsList.height(units) + GAP <= space.height() - TitleBlock.HEIGHT;
            boolean titleFits = space.width() - columnOne() - GAP >= TitleBlock.WIDTH
                    && GAP + columns() <= space.width()
                    && height + NAME >= TitleBlock.HEIGHT;
            return tall && listFits && titleFits;
        }

        SheetPlan plan(SheetSize size, boolean beside) {
            Bounds space = size.space();
            double spare = Math.min(12, (space.height() - rows()) / 4);
            double x = space.x0() + left() - paper(body.outside().x0(), scale);
            double rear = space.x0() + columnOne() + paper(body.outside().y1(), scale);
            double top = space.y0() + spare + NAME + paper(body.outside().z1(), scale);
            double plan = space.y0()
                    + 2 * spare
                    + NAME
                    + height
                    + NAME
                    + room(Face.LEFT)
                    + paper(body.outside().y1(), scale);
            double bottom = space.y0()
                    + 3 * spare
                    + NAME
                    + height
                    + NAME
                    + room(Face.LEFT)
                    + width
                    + room(Face.RIGHT)
                    + NAME
                    + paper(body.outside().z1(), scale);
            double section = plan
                    + (paper(body.outside().z1() + body.outside().z0(), scale)
                                    - paper(body.outside().y1() + body.outside().y0(), scale))
                            / 2;
            double leftX = space.x0() + left() + paper(body.outside().x1(), scale);
            return new SheetPlan(
                    size,
                    scale,
                    beside,
                    new Sheeted(Aspect.RIGHT, scale, new Spot(x, top)),
                    new Sheeted(Aspect.REAR, scale, new Spot(rear, top)),
                    new Sheeted(Aspect.ABOVE, scale, new Spot(x, plan)),
                    new Sheeted(Aspect.REAR, scale, new Spot(rear, section)),
                    new Sheeted(Aspect.LEFT, scale, new Spot(leftX, bottom)));
        }

        private double rows() {
            return 3 * NAME + 2 * height + room(Face.LEFT) + width + room(Face.RIGHT) + LEAST_GAP;
        }

        /** Room at a wall of the plan for swings and dimensions beyond them. */
        private double room(Face wall) {
            double swing = SheetPlan.swing(body, wall, scale);
            return swing > 0 ? swing + DIMENSIONS - SAVED : DIMENSIONS;
        }

        private double left() {
            return Math.max(DIMENSIONS, SheetPlan.swing(body, Face.REAR, scale) + 4);
        }

        private double columnOne() {
            return left() + length + room(Face.FRONT) + GAP / 2;
        }

        private double columns() {
            return columnOne() + width + GAP / 2;
        }

        private static double paper(int micrometres, int scale) {
            return micrometres / 1000.0 / scale;
        }
    }

    /** How far doors swing out beyond an upright wall, on paper (mm). */
    static double swing(Body body, Face wall, double scale) {
        Box outside = body.outside();
        int edge = wall.sign() > 0 ? outside.high(wall.axis()) : outside.low(wall.axis());
        int farthest = 0;
        for (Opening opening : body.openings()) {
            if (opening.kind() == Opening.Kind.DOOR && opening.swing() == null && opening.wall() == wall) {
                for (Point point :
                        DoorSwing.of(body, opening).map(DoorSwing::arc).orElse(List.of())) {
                    farthest = Math.max(farthest, wall.sign() * (point.along(wall.axis()) - edge));
                }
            }
        }
        return farthest / 1000.0 / scale;
    }

    /** The outside of the body in a view. */
    static Bounds outside(Sheeted view, Body body) {
        Box outside = body.outside();
        return view.bounds(outside);
    }
}
