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
    private static final double FRONT = 62;
    private static final double REAR = 138;
    private static final double SIDE = 204;
    private static final double LIST = 290;
    /** Height of the title block, with some room. */
    private static final double TITLE = 50;

    private static final double NOTES = 30;
    private static final double NOTES_WIDTH = 180;
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
     * @param notes sentences for the notes of the drawing
     * @param limits what limits the bay, the tightest first
     */
    public Drawing sheet(
            String name,
            String number,
            String sheet,
            String program,
            Particulars particulars,
            List<String> notes,
            List<BayLimits.Line> limits) {
        List<Shape> shapes = new ArrayList<>(SheetFrame.shapes(SheetSize.A3));
        shapes.add(new Group("front", front()));
        shapes.add(new Group("rear", rear()));
        shapes.add(new Group("side", side()));
        shapes.add(new Group("list", list()));
        shapes.add(new Group("notes", notes(notes)));
        Bounds space = SheetSize.A3.space();
        double below = TOP + 4.1 * bay.pieces().size() + 14;
        shapes.add(new Group("limits", new BayLimits(typeface).shapes(limits, LIST, below, space.y1() - TITLE)));
        shapes.add(new Group(
                "title block",
                new TitleBlock(typeface)
                        .shapes(
                                new Spot(space.x1(), space.y1()),
                                new TitleBlock.Fields(
                                        number, "Rack elevation", bay.name(), name, sheet, "1:10", "A3", program),
                                particulars)));
        return new Drawing(name + ", rack elevation of " + bay.name(), space.x1() + 10, space.y1() + 10, shapes);
    }

    private List<Shape> notes(List<String> notes) {
        List<Shape> shapes = new ArrayList<>();
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR);
        double y = Math.max(bottom + 20, SheetSize.A3.space().y1() - 44);
        for (String note : notes) {
            for (String line : wrap.lines(note, NOTES_WIDTH)) {
                shapes.add(Lettering.of(line, new Spot(NOTES, y), TEXT));
                y += 3.8;
            }
        }
        return shapes;
    }

    private double y(int heightUm) {
        return bottom - mm(heightUm);
    }

    private List<Shape> front() {
        List<Shape> shapes = new ArrayList<>(title(FRONT, "Front"));
        shapes.addAll(drawn(FRONT).shapes(bay.pieces()));
        double half = mm(RackStandard.PANEL_WIDTH) / 2;
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
        Bounds panel = drawn(middle).bounds(piece);
        return new Bounds(middle - half, panel.y0(), middle + half, panel.y1());
    }

    private BayFront drawn(double middle) {
        return new BayFront(typeface, bay.bay(), new Spot(middle, bottom), 1 / SCALE);
    }

    private static List<Shape> title(double middle, String title) {
        return List.of(Lettering.bold(title, new Spot(middle, TOP - 6), 2.5).with(Align.MIDDLE));
    }

    private List<Shape> rear() {
        List<Shape> shapes = new ArrayList<>(title(REAR, "Rear"));
        shapes.addAll(drawn(REAR).uprights());
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
            shapes.add(
                    Lettering.of(text, new Spot(back.x1() - 1.5, back.centre().y() + size / 2), size)
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
            shapes.add(Polygon.of(
                    new Bounds(back, high, before, low),
                    Role.RAISED.colour(),
                    piece.mount().blank() ? THIN : EDGE));
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
        shapes.add(Lettering.bold(Numerals.of(kg, 1), new Spot(stops[3], y + 0.8), TEXT)
                .with(Align.END));
        shapes.add(Lettering.bold(Numerals.of(watts, 0), new Spot(stops[4], y + 0.8), TEXT)
                .with(Align.END));
        return shapes;
    }
}
