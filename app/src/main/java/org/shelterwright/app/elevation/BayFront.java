package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.layouts.inside.InRack;

/**
 * The front of a bay to any scale: uprights with their holes, panels with screws and names, numbers of the height units.
 *
 * <p>Source: IEC 60297-3-100 for sizes and holes.
 */
public final class BayFront {
    private static final Pen EDGE = Pen.of(0.35, Role.TEXT.colour());
    private static final Pen THIN = Pen.of(0.18, Role.TEXT.colour());
    private static final double SMALL = 0.34;
    private static final double LARGE = 0.41;
    private static final double NUMBER = 0.32;

    private final Typeface typeface;
    private final RackBay bay;
    private final Spot foot;
    private final double scale;

    /**
     * @param foot where the middle of the lower edge of unit 1 lies on paper (mm)
     * @param scale length on paper against length
     */
    public BayFront(Typeface typeface, RackBay bay, Spot foot, double scale) {
        this.typeface = typeface;
        this.bay = bay;
        this.foot = foot;
        this.scale = scale;
    }

    /** The whole front. */
    public List<Shape> shapes(List<InRack> pieces) {
        List<Shape> shapes = new ArrayList<>(uprights());
        pieces.forEach(piece -> shapes.addAll(panel(piece)));
        shapes.addAll(numbers());
        return shapes;
    }

    /** The rectangle of all height units, as wide as a panel. */
    public Bounds bounds() {
        return units(1, bay.units());
    }

    /** The rectangle of some height units. */
    public Bounds units(int lowest, int count) {
        double half = mm(RackStandard.PANEL_WIDTH) / 2;
        return new Bounds(
                foot.x() - half,
                y(RackStandard.height(lowest - 1 + count)),
                foot.x() + half,
                y(RackStandard.height(lowest - 1)));
    }

    /** The panel of a piece. */
    public Bounds bounds(InRack piece) {
        double half = mm(RackStandard.PANEL_WIDTH) / 2;
        double high = y(piece.low() + RackStandard.panelHeight(piece.mount().units()));
        return new Bounds(foot.x() - half, high, foot.x() + half, y(piece.low()));
    }

    /** Number of the height unit at a height on paper; below 1 or above the last outside the bay. */
    public int unitAt(double paperY) {
        return (int) Math.floor((foot.y() - paperY) / mm(RackStandard.UNIT)) + 1;
    }

    /** The uprights with their holes. */
    public List<Shape> uprights() {
        List<Shape> shapes = new ArrayList<>();
        Bounds all = bounds();
        double opening = mm(RackStandard.OPENING) / 2;
        double off = mm(RackStandard.HOLE_CENTRES) / 2;
        for (int side = -1; side <= 1; side += 2) {
            double outer = side < 0 ? all.x0() : all.x1();
            double inner = foot.x() + side * opening;
            shapes.add(Polygon.of(
                    new Bounds(Math.min(outer, inner), all.y0(), Math.max(outer, inner), all.y1()), null, THIN));
            for (int hole : RackStandard.holes(bay.units())) {
                shapes.add(new Circle(
                        new Spot(foot.x() + side * off, y(hole)), mm(2_500), null, Pen.of(0.1, Role.LINES.colour())));
            }
        }
        shapes.add(Polygon.of(all, null, EDGE));
        return shapes;
    }

    /** The panel of a piece with its screws and its name. */
    public List<Shape> panel(InRack piece) {
        boolean blank = piece.mount().blank();
        Bounds panel = bounds(piece);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(panel, blank ? Role.PANEL.colour() : Role.RAISED.colour(), blank ? THIN : EDGE));
        double off = mm(RackStandard.HOLE_CENTRES) / 2;
        for (int height : RackStandard.screws(piece.lowest(), piece.mount().units())) {
            shapes.add(new Circle(new Spot(foot.x() - off, y(height)), mm(3_500), Role.TEXT.colour(), null));
            shapes.add(new Circle(new Spot(foot.x() + off, y(height)), mm(3_500), Role.TEXT.colour(), null));
        }
        double size = mm(RackStandard.UNIT) * (piece.mount().units() == 1 ? SMALL : LARGE);
        double room = mm(RackStandard.OPENING) * 0.94;
        String text = new Wrap(typeface, Typeface.sizeOf(size), Weight.REGULAR).shortened(piece.name(), room);
        Spot at = new Spot(panel.centre().x(), panel.centre().y() + size / 2);
        var label = Lettering.of(text, at, size).with(Align.MIDDLE);
        shapes.add(blank ? Lettering.in(label, Role.MUTED.colour()) : label);
        return shapes;
    }

    private List<Shape> numbers() {
        List<Shape> shapes = new ArrayList<>();
        double size = mm(RackStandard.UNIT) * NUMBER;
        for (int unit = 1; unit <= bay.units(); unit++) {
            if (unit == 1 || unit % 2 == 0) {
                Bounds one = units(unit, 1);
                Spot at = new Spot(one.x0() - size * 1.5, one.centre().y() + size / 2);
                shapes.add(Lettering.muted(Integer.toString(unit), at, size).with(Align.END));
            }
        }
        return shapes;
    }

    private double mm(int micrometres) {
        return micrometres / 1000.0 * scale;
    }

    private double y(int height) {
        return foot.y() - mm(height);
    }
}
