package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.sheet.SheetFrame;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.sheet.TitleBlock;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.racks.FilledBay;

/**
 * The elevation of a bay at true scale, 1:10 on A3: front, rear, and the side in section with depths, plugs and bends, with the
 * hole pattern of the uprights and a list of the pieces.
 *
 * <p>Source: IEC 60297-3-100 for sizes and holes; drawn after the ISO conventions for technical drawings.
 */
public final class RackElevation {
    private static final double SCALE = 10;
    private static final double TEXT = 1.8;
    private static final double TOP = 34;
    private static final double FRONT = 44;
    private static final double REAR = 122;
    private static final double SIDE = 196;
    private static final double LIST = 290;
    private static final Pen EDGE = Pen.of(0.35, Role.TEXT.colour());
    private static final Pen THIN = Pen.of(0.18, Role.TEXT.colour());
    private static final Pen HIDDEN = Pen.of(0.18, Role.LINES.colour()).with(LineType.DASHED);

    private final Typeface typeface;
    private final Codes codes;
    private final FilledBay bay;
    private final double bottom;

    public RackElevation(Typeface typeface, Codes codes, FilledBay bay) {
        this.typeface = typeface;
        this.codes = codes;
        this.bay = bay;
        this.bottom = TOP + mm(bay.bay().height());
    }

    private static double mm(int micrometres) {
        return micrometres / 1000.0 / SCALE;
    }

    /**
     * The sheet.
     *
     * @param number of the document
     * @param sheet such as "1 / 2"
     * @param program program, version and seed
     */
    public Drawing sheet(String name, String number, String sheet, String program, Particulars particulars) {
        List<Shape> shapes = new ArrayList<>(SheetFrame.shapes(SheetSize.A3));
        shapes.add(new Group("front", front()));
        shapes.add(new Group("rear", rear()));
        shapes.add(new Group("side", side()));
        shapes.add(new Group("list", list()));
        Bounds space = SheetSize.A3.space();
        shapes.add(new Group(
                "title block",
                new TitleBlock(typeface)
                        .shapes(
                                new Spot(space.x1(), space.y1()),
                                new TitleBlock.Fields(
                                        number,
                                        "Rack elevation",
                                        bay.name(),
                                        name,
                                        sheet,
                                        "1:10",
                                        "A3",
                                        program),
                                particulars)));
        return new Drawing(name + ", rack elevation of " + bay.name(), space.x1() + 10, space.y1() + 10, shapes);
    }

    private double y(int heightUm) {
        return bottom - mm(heightUm);
    }

    private List<Shape> front() {
        List<Shape> shapes = new ArrayList<>(frame(FRONT, "Front"));
        double half = mm(RackStandard.PANEL_WIDTH) / 2;
        for (InRack piece : bay.pieces()) {
            Bounds panel = panel(piece, FRONT, half);
            boolean blank = piece.mount().blank();
            shapes.add(Polygon.of(panel, blank ? Role.PANEL.colour() : Role.RAISED.colour(), blank ? THIN : EDGE));
            screws(piece, FRONT, shapes);
            shapes.add(name(piece, panel));
        }
        for (int unit = 1; unit <= bay.bay().units(); unit++) {
            if (unit == 1 || unit % 2 == 0) {
                double middle = y(RackStandard.height(unit)) + mm(RackStandard.UNIT) / 2 + 0.7;
                shapes.add(Lettering.muted(Integer.toString(unit), new Spot(FRONT - half - 2.2, middle), 1.4)
                        .with(Align.END));
            }
        }
        double right = FRONT + half + 6;
        shapes.add(Lines.of(THIN, new Spot(right, bottom), new Spot(right, TOP)));
        shapes.add(Lines.of(THIN, new Spot(right - 1.5, bottom), new Spot(right + 1.5, bottom)));
        shapes.add(Lines.of(THIN, new Spot(right - 1.5, TOP), new Spot(right + 1.5, TOP)));
        shapes.add(Lettering.upright(
                bay.bay().units() + " U = " + Lengths.format(bay.bay().height()),
                new Spot(right + 3.2, (TOP + bottom) / 2),
                TEXT,
                Align.MIDDLE));
        return shapes;
    }

    private Bounds panel(InRack piece, double middle, double half) {
        double low = y(piece.low());
        double high = y(piece.low() + RackStandard.panelHeight(piece.mount().units()));
        return new Bounds(middle - half, high, middle + half, low);
    }

    private Shape name(InRack piece, Bounds panel) {
        double size = piece.mount().units() == 1 ? 1.5 : TEXT;
        String text = new Wrap(typeface, Typeface.sizeOf(size), Weight.REGULAR)
                .shortened(piece.name(), panel.width() - 4);
        var label = Lettering.of(text, new Spot(panel.centre().x(), panel.centre().y() + size / 2), size)
                .with(Align.MIDDLE);
        return piece.mount().blank() ? Lettering.in(label, Role.MUTED.colour()) : label;
    }

    private void screws(InRack piece, double middle, List<Shape> shapes) {
        double off = mm(RackStandard.HOLE_CENTRES) / 2;
        for (int height : RackStandard.screws(piece.lowest(), piece.mount().units())) {
            shapes.add(new Circle(new Spot(middle - off, y(height)), 0.35, Role.TEXT.colour(), null));
            shapes.add(new Circle(new Spot(middle + off, y(height)), 0.35, Role.TEXT.colour(), null));
        }
    }

    /** Title of a view and the uprights with their holes. */
    private List<Shape> frame(double middle, String title) {
        List<Shape> shapes = new ArrayList<>();
        double half = mm(RackStandard.PANEL_WIDTH) / 2;
        double opening = mm(RackStandard.OPENING) / 2;
        double off = mm(RackStandard.HOLE_CENTRES) / 2;
        shapes.add(Lettering.bold(title, new Spot(middle, TOP - 6), 2.5).with(Align.MIDDLE));
        for (int side = -1; side <= 1; side += 2) {
            double outer = middle + side * half;
            double inner = middle + side * opening;
            shapes.add(Polygon.of(
                    new Bounds(Math.min(outer, inner), TOP, Math.max(outer, inner), bottom), null, THIN));
            for (int hole : RackStandard.holes(bay.bay().units())) {
                shapes.add(new Circle(new Spot(middle + side * off, y(hole)), 0.25, null, Pen.of(0.1, Role.LINES.colour())));
            }
        }
        shapes.add(Polygon.of(new Bounds(middle - half, TOP, middle + half, bottom), null, EDGE));
        return shapes;
    }

    private List<Shape> rear() {
        List<Shape> shapes = new ArrayList<>(frame(REAR, "Rear"));
        for (InRack piece : bay.pieces()) {
            if (piece.mount().blank()) {
                continue;
            }
            double half = mm(piece.piece().size().y()) / 2;
            Bounds back = panel(piece, REAR, half);
            shapes.add(Polygon.of(back, Role.RAISED.colour(), EDGE));
            long ports = piece.mount().cableFaces().stream()
                    .filter(one -> one.face() == Face.REAR)
                    .count();
            for (int i = 0; i < ports; i++) {
                Spot at = new Spot(back.x0() + 2.5 + 3.2 * i, back.centre().y());
                shapes.add(new Circle(at, 0.9, null, THIN));
            }
            double size = piece.mount().units() == 1 ? 1.5 : TEXT;
            String text = new Wrap(typeface, Typeface.sizeOf(size), Weight.REGULAR)
                    .shortened(piece.name(), back.width() - 6 - 3.2 * ports);
            shapes.add(Lettering.of(text, new Spot(back.x1() - 1.5, back.centre().y() + size / 2), size)
                    .with(Align.END));
        }
        return shapes;
    }

    private List<Shape> side() {
        List<Shape> shapes = new ArrayList<>();
        double front = mm(bay.bay().frontRoom());
        double plane = SIDE + mm(bay.bay().rearRoom());
        shapes.add(Lettering.bold("Side, seen from the right", new Spot((SIDE + plane + front) / 2, TOP - 6), 2.5)
                .with(Align.MIDDLE));
        shapes.add(Polygon.of(new Bounds(SIDE, TOP, plane + front, bottom), null, EDGE));
        shapes.add(Lines.of(THIN, new Spot(plane, TOP), new Spot(plane, bottom)));
        Integer rails = bay.bay().railDepth();
        if (rails != null) {
            shapes.add(Lines.of(THIN, new Spot(plane - mm(rails), TOP), new Spot(plane - mm(rails), bottom)));
        }
        for (InRack piece : bay.pieces()) {
            double low = y(piece.low());
            double high = y(piece.low() + piece.piece().size().z());
            double back = plane - mm(piece.rearDepth());
            double before = plane + mm(piece.mount().frontDepth());
            shapes.add(Polygon.of(new Bounds(back, high, before, low), Role.RAISED.colour(), piece.mount().blank() ? THIN : EDGE));
            double rearCables = mm(piece.mount().cableDepth(Face.REAR));
            double frontCables = mm(piece.mount().cableDepth(Face.FRONT));
            if (rearCables > 0) {
                shapes.add(Polygon.of(new Bounds(back - rearCables, high + 0.4, back, low - 0.4), null, HIDDEN));
            }
            if (frontCables > 0) {
                shapes.add(Polygon.of(new Bounds(before, high + 0.4, before + frontCables, low - 0.4), null, HIDDEN));
            }
        }
        double foot = bottom + 5;
        shapes.add(Lettering.muted("rear", new Spot(SIDE, foot), 1.6));
        shapes.add(Lettering.muted("front", new Spot(plane + front, foot), 1.6).with(Align.END));
        shapes.add(Lettering.muted(
                        "room " + Lengths.format(bay.bay().rearRoom()) + " behind, "
                                + Lengths.format(bay.bay().frontRoom()) + " before the mounting plane",
                        new Spot(SIDE, foot + 4.2),
                        1.6));
        shapes.add(Lettering.muted("dashed: plugs, bends, cable arms", new Spot(SIDE, foot + 8.4), 1.6));
        return shapes;
    }

    private List<Shape> list() {
        List<Shape> shapes = new ArrayList<>();
        double[] stops = {LIST, LIST + 14, LIST + 26, LIST + 78, LIST + 92, LIST + 107};
        String[] heads = {"U", "Code", "Piece", "kg", "W", "Strip"};
        double y = TOP - 6;
        for (int i = 0; i < heads.length; i++) {
            boolean figures = i == 3 || i == 4;
            shapes.add(Lettering.bold(heads[i], new Spot(stops[i], y), TEXT).with(figures ? Align.END : Align.START));
        }
        shapes.add(Lines.of(THIN, new Spot(LIST, y + 1.6), new Spot(LIST + 118, y + 1.6)));
        y += 5;
        double kg = 0;
        double watts = 0;
        for (int i = bay.pieces().size() - 1; i >= 0; i--) {
            InRack piece = bay.pieces().get(i);
            Double own = piece.piece().mass().massKg();
            var power = piece.piece().power();
            kg += own == null ? 0 : own;
            watts += power == null ? 0 : power.ratedW();
            String strip = piece.spec().strip();
            String[] cells = {
                piece.lowest() == piece.highest() ? "" + piece.lowest() : piece.lowest() + "–" + piece.highest(),
                codes.piece(piece.id()),
                new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR).shortened(piece.name(), 44),
                own == null ? "?" : Numerals.of(own, 1),
                power == null ? "" : Numerals.of(power.ratedW(), 0),
                strip == null || power == null ? "" : strip
            };
            for (int c = 0; c < cells.length; c++) {
                boolean figures = c == 3 || c == 4;
                shapes.add(Lettering.of(cells[c], new Spot(stops[c], y), TEXT).with(figures ? Align.END : Align.START));
            }
            y += 4.1;
        }
        shapes.add(Lines.of(THIN, new Spot(LIST, y - 2.6), new Spot(LIST + 118, y - 2.6)));
        shapes.add(Lettering.bold("Sum", new Spot(stops[2], y + 0.8), TEXT));
        shapes.add(Lettering.bold(Numerals.of(kg, 1), new Spot(stops[3], y + 0.8), TEXT).with(Align.END));
        shapes.add(Lettering.bold(Numerals.of(watts, 0), new Spot(stops[4], y + 0.8), TEXT).with(Align.END));
        return shapes;
    }
}
