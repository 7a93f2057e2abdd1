package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.app.view.Aspect;
import org.shelterwright.app.view.Cables;
import org.shelterwright.app.view.Caption;
import org.shelterwright.app.view.FlatView;
import org.shelterwright.app.view.Sheeted;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** An overview of the wiring: trays and wires from above and from the right side, over the units in pale, with a key. */
public final class WiringPicture {
    private static final double WIDTH = 420;
    private static final double MARGIN = 14;
    private static final double HEAD = 16;
    private static final double FOOT = 12;
    private static final double KEY = 132;
    private static final double GAP = 14;
    private static final double LINE = 4.4;
    private static final double TEXT = 2;
    private static final double NAME = 1.7;
    private static final double NUMBER = 1.5;

    /** How far the wires of a bundle lie from each other on paper (mm). */
    private static final double FAN = 0.42;

    private final Typeface typeface;

    public WiringPicture(Typeface typeface) {
        this.typeface = typeface;
    }

    public Drawing of(Scene scene, Caption caption) {
        CableNet net = CableNet.of(scene);
        Box outside = scene.body().outside();
        double room = WIDTH - 2 * MARGIN - KEY - GAP;
        double swing = SheetPlan.swing(scene.body(), Face.REAR, 1);
        double beyond = SheetPlan.swing(scene.body(), Face.FRONT, 1);
        double beside = SheetPlan.swing(scene.body(), Face.LEFT, 1);
        double below = SheetPlan.swing(scene.body(), Face.RIGHT, 1);
        double scale = (mm(outside.x1() - outside.x0()) + swing + beyond) / room;
        double deep = (mm(outside.y1() - outside.y0()) + beside + below) / scale;
        double tall = mm(outside.z1() - outside.z0()) / scale;
        double drawn = deep + GAP + tall;
        double listed = LINE * (net.wires().size() + 9);
        double height = 2 * MARGIN + HEAD + Math.max(drawn, listed) + FOOT;
        double left = MARGIN + (swing - mm(outside.x0())) / scale;
        double top = MARGIN + HEAD;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, WIDTH, height), Role.RAISED.colour(), null));
        Spot above = new Spot(left, top + (mm(outside.y1()) + beside) / scale);
        Spot side = new Spot(left, top + deep + GAP + mm(outside.z1()) / scale);
        view(scene, net, new Sheeted(Aspect.ABOVE, scale, above), shapes);
        view(scene, net, new Sheeted(Aspect.RIGHT, scale, side), shapes);
        shapes.add(Lettering.muted("from above, front to the right", new Spot(MARGIN, top + deep + 5), TEXT));
        shapes.add(Lettering.muted("from the right side, front to the right", new Spot(MARGIN, top + drawn + 5), TEXT));
        key(net, WIDTH - MARGIN - KEY, top, shapes);
        shapes.add(Lettering.bold(caption.title(), new Spot(MARGIN, MARGIN + 3), 3.2));
        shapes.add(Lettering.muted(caption.subtitle(), new Spot(MARGIN, MARGIN + 8.6), 2.3));
        shapes.add(Lettering.muted(caption.foot(), new Spot(WIDTH - MARGIN, height - 6), 1.8)
                .with(Align.END));
        return new Drawing(caption.title() + ", " + caption.subtitle(), WIDTH, height, shapes);
    }

    private void view(Scene scene, CableNet net, Sheeted sheeted, List<Shape> shapes) {
        FlatView flat = new FlatView(scene, Situation.ON_STATION, sheeted, 0.8, null);
        shapes.addAll(flat.shapes(false));
        List<Shape> trays = new ArrayList<>();
        for (Tray tray : scene.body().trays()) {
            for (int i = 1; i < tray.path().size(); i++) {
                Point a = tray.path().get(i - 1);
                Point b = tray.path().get(i);
                Box band = Box.between(a, a).hull(Box.between(b, b));
                int half = tray.width() / 2;
                Box wide = band.grown(
                        a.x() == b.x() ? half : 0, a.y() == b.y() ? half : 0, a.z() == b.z() ? tray.depth() / 2 : 0);
                trays.add(Polygon.of(
                        sheeted.bounds(wide),
                        null,
                        Pen.of(0.18, Role.MUTED.colour()).with(LineType.DASHED)));
            }
        }
        shapes.add(new Group("trays", trays));
        List<Shape> wires = new ArrayList<>();
        int count = net.wires().size();
        for (int i = 0; i < count; i++) {
            wire(net.wires().get(i), FAN * (i - (count - 1) / 2.0) * Math.min(1, 6.0 / count), sheeted, wires);
        }
        shapes.add(new Group("wires", wires));
        List<Bounds> taken = new ArrayList<>();
        names(scene, flat, taken, shapes);
        for (LaidWire wire : net.wires()) {
            number(wire, sheeted, taken, shapes);
        }
    }

    /** Names of units where they fit, on plates over the wires. */
    private void names(Scene scene, FlatView flat, List<Bounds> taken, List<Shape> shapes) {
        for (PlacedUnit unit : scene.units()) {
            Label label = Lettering.muted(unit.name(), new Spot(0, 0), NAME).with(Align.MIDDLE);
            double width = typeface.width(label) + 1.5;
            for (Bounds part : flat.parts(unit.id())) {
                Bounds middle = Bounds.around(part.centre(), width, NAME + 1.5);
                if (part.contains(middle) && flat.shows(middle, unit.id())) {
                    taken.add(middle);
                    shapes.add(Polygon.of(middle, Role.RAISED.colour(), null));
                    shapes.add(label.at(part.centre().plus(0, NAME / 2)));
                    break;
                }
            }
        }
    }

    /** The number of a wire beside one of its ends, where there is room for it. */
    private void number(LaidWire wire, Sheeted sheeted, List<Bounds> taken, List<Shape> shapes) {
        if (wire.shape() == null || wire.shape().path().isEmpty()) {
            return;
        }
        List<Point> path = wire.shape().path();
        Label label = new Label(
                wire.wire().id(),
                new Spot(0, 0),
                Typeface.sizeOf(NUMBER),
                Weight.SEMIBOLD,
                Align.MIDDLE,
                0,
                colour(wire.cable()));
        double wide = typeface.width(label) + 0.8;
        double high = NUMBER + 0.8;
        for (Point end : List.of(path.get(path.size() - 1), path.get(0))) {
            Spot at = sheeted.spot(end);
            double aside = 1.1 + wide / 2;
            double above = 1.1 + high / 2;
            for (Spot middle : List.of(
                    at.plus(aside, 0),
                    at.plus(-aside, 0),
                    at.plus(0, -above),
                    at.plus(0, above),
                    at.plus(aside, -above),
                    at.plus(-aside, -above),
                    at.plus(aside, above),
                    at.plus(-aside, above))) {
                Bounds plate = Bounds.around(middle, wide, high);
                if (taken.stream().noneMatch(plate::overlaps)) {
                    taken.add(plate);
                    shapes.add(Polygon.of(plate, Role.RAISED.colour(), null));
                    shapes.add(label.at(middle.plus(0, NUMBER / 2)));
                    return;
                }
            }
        }
    }

    private static void wire(LaidWire wire, double off, Sheeted sheeted, List<Shape> shapes) {
        Cable cable = wire.cable();
        if (wire.shape() == null || wire.shape().path().isEmpty()) {
            return;
        }
        Colour colour = colour(cable);
        List<Point> path = wire.shape().path();
        List<Spot> spots = new ArrayList<>();
        for (Point point : path) {
            spots.add(sheeted.spot(point).plus(off, off));
        }
        shapes.add(new Lines(List.of(spots), Pen.of(0.3, colour)));
        shapes.add(new Circle(spots.get(0), 0.8, colour, null));
        shapes.add(new Circle(spots.get(spots.size() - 1), 0.8, Role.RAISED.colour(), Pen.of(0.3, colour)));
    }

    private void key(CableNet net, double x, double top, List<Shape> shapes) {
        double y = top + 3;
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR);
        for (CableClass one : CableClass.values()) {
            long count = net.wires().stream()
                    .map(LaidWire::cable)
                    .filter(cable -> cable != null && cable.cableClass() == one)
                    .count();
            if (count > 0) {
                shapes.add(Lines.of(Pen.of(0.6, colour(one)), new Spot(x, y - 0.7), new Spot(x + 9, y - 0.7)));
                shapes.add(Lettering.of(word(one) + ", " + count, new Spot(x + 12, y), TEXT));
                y += LINE;
            }
        }
        shapes.add(Lettering.muted("dashed: trays; full dot: from, open dot: to", new Spot(x, y), TEXT));
        y += 1.5 * LINE;
        for (LaidWire wire : net.wires()) {
            String ends = name(wire.from()) + " - " + name(wire.to());
            shapes.add(Lines.of(Pen.of(0.6, colour(wire.cable())), new Spot(x, y - 0.7), new Spot(x + 5, y - 0.7)));
            shapes.add(Lettering.bold(wire.wire().id(), new Spot(x + 7, y), TEXT));
            shapes.add(Lettering.of(
                    wrap.shortened(ends + (wire.routed() ? "" : ": no route"), KEY - 19), new Spot(x + 18, y), TEXT));
            y += LINE;
        }
    }

    private static String name(@Nullable WireEnd end) {
        return end == null ? "?" : end.name();
    }

    private static Colour colour(@Nullable Cable cable) {
        return cable == null ? Role.TEXT.colour() : colour(cable.cableClass());
    }

    /** The colour of a class of cables. */
    public static Colour colour(CableClass of) {
        return Cables.colour(of);
    }

    private static String word(CableClass of) {
        return switch (of) {
            case POWER -> "power";
            case SIGNAL -> "signal";
            case RADIO_FREQUENCY -> "radio frequency";
            case FIBRE -> "fibre";
            case EARTH -> "earth";
        };
    }

    private static double mm(int micrometres) {
        return micrometres / 1000.0;
    }
}
