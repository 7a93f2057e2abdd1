package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
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
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;
import org.shelterwright.layouts.ledger.transport.securing.Rope;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** A loaded car from its right side and from above, to one scale, with lashings, chocks, distances and what its wheels bear. */
final class LongView {
    private static final double WHEEL = 0.46;
    private static final double TYRE = 0.42;
    private static final double BETWEEN = 9;
    private static final double UNDER = 10;
    private static final double LEAST_NAMED = 18;

    private final Typeface typeface;
    private final LegScene leg;
    private final PlacedLoad load;
    private final double scale;
    private final double left;
    private final double rear;
    private final double rail;
    private final double floor;
    private final double middle;
    private final List<Shape> shapes = new ArrayList<>();

    /** @param paper where it goes; its height follows from its width, see {@link #height} */
    LongView(Typeface typeface, LegScene leg, PlacedLoad load, Bounds paper) {
        this.typeface = typeface;
        this.leg = leg;
        this.load = load;
        double over = overhang(load.car());
        this.rear = -over;
        this.scale = scale(load, paper.width());
        this.left = paper.x0()
                + (paper.width() - scale * (CarPaper.m(load.car().deck().length()) + 2 * over)) / 2;
        this.rail = paper.y0() + 4 + scale * (deckHeight(load.car()) + top(load));
        this.floor = rail - scale * deckHeight(load.car());
        this.middle =
                rail + UNDER + BETWEEN + scale * CarPaper.m(load.car().deck().width()) / 2;
    }

    /** Height on paper (mm) for a width. */
    static double height(PlacedLoad load, double width) {
        double scale = scale(load, width);
        return 4
                + scale
                        * (deckHeight(load.car())
                                + top(load)
                                + CarPaper.m(load.car().deck().width()))
                + UNDER
                + BETWEEN
                + 14;
    }

    private static double scale(PlacedLoad load, double width) {
        double length = CarPaper.m(load.car().deck().length()) + 2 * overhang(load.car());
        double beyond = load.hull()
                .map(hull -> CarPaper.m(hull.x1() - load.car().deck().length()))
                .orElse(0.0);
        return Math.min(20, (width - 2) / (length + Math.max(0, beyond)));
    }

    private static double overhang(TransitCar car) {
        Integer over = car.lengthOver();
        return over == null
                ? 0.3
                : Math.max(0.1, Math.min(1.5, CarPaper.m(over - car.deck().length()) / 2));
    }

    private static double deckHeight(TransitCar car) {
        Integer highest = car.deck().highest();
        return highest == null ? 0.2 : CarPaper.m(highest);
    }

    private static double top(PlacedLoad load) {
        double high = load.hull().map(hull -> CarPaper.m(hull.z1())).orElse(1.0);
        Integer clear = load.car().deck().clearHeight();
        return Math.max(1, clear == null ? high : Math.max(high, CarPaper.m(clear)));
    }

    /** Scale in words, such as "1:106". */
    String scaleText() {
        return "1:" + Math.round(1000 / scale);
    }

    List<Shape> shapes() {
        side();
        above();
        return shapes;
    }

    private void side() {
        frame();
        List<PlacedPiece> far = load.pieces().stream()
                .sorted(Comparator.comparingInt(
                                (PlacedPiece piece) -> -piece.box().y0())
                        .thenComparing(PlacedPiece::id))
                .toList();
        far.forEach(this::sideOf);
        chocks();
        for (Rope rope : Rope.of(leg, load)) {
            if (!rope.direct() || rope.foot().y() * 2 <= load.car().deck().width()) {
                Point from = rope.top();
                if (rope.direct()) {
                    shapes.addAll(CarPaper.lashing(at(from), at(rope.foot())));
                } else {
                    shapes.addAll(CarPaper.lashing(at(rope.foot()), at(new Point(from.x(), 0, from.z()))));
                }
            }
        }
        far.forEach(piece -> {
            Point centre = piece.centre();
            if (centre != null) {
                shapes.addAll(CarPaper.centre(at(centre)));
            }
        });
        distances();
        wheels();
    }

    private void frame() {
        TransitCar car = load.car();
        double length = CarPaper.m(car.deck().length());
        shapes.add(
                Lines.of(Pen.of(0.35, Role.LINES.colour()), new Spot(x(rear), rail), new Spot(x(length - rear), rail)));
        if (!car.wheels().isEmpty()) {
            for (WheelGroup group : car.wheels()) {
                for (double wheel : places(group)) {
                    shapes.add(new Circle(
                            new Spot(x(wheel), rail - scale * WHEEL),
                            scale * WHEEL,
                            Tint.RUBBER.side(),
                            CarPaper.EDGE));
                }
            }
            shapes.add(Polygon.of(
                    CarPaper.box(x(rear), floor, x(length - rear), floor + scale * 0.42),
                    Tint.STEEL.end(),
                    CarPaper.EDGE));
        }
        shapes.add(Polygon.of(
                CarPaper.box(x(0), floor, x(length), floor + scale * 0.12), Tint.TIMBER.side(), CarPaper.SILHOUETTE));
        Integer clear = car.deck().clearHeight();
        if (clear != null) {
            shapes.add(Polygon.of(
                    CarPaper.box(x(0), floor - scale * CarPaper.m(clear), x(length), floor),
                    null,
                    CarPaper.SILHOUETTE));
        }
    }

    private static List<Double> places(WheelGroup group) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < group.axles(); i++) {
            double off = group.axles() == 1 ? 0 : (double) i / (group.axles() - 1) - 0.5;
            places.add(CarPaper.m(group.x()) + off * CarPaper.m(group.spacing()));
        }
        return places;
    }

    private void sideOf(PlacedPiece piece) {
        for (int place : piece.axlePlaces()) {
            shapes.add(new Circle(
                    new Spot(x(CarPaper.m(place)), floor - scale * TYRE),
                    scale * TYRE,
                    Tint.RUBBER.side(),
                    CarPaper.EDGE));
        }
        List<Box> solids = piece.solids();
        for (int i = 0; i < solids.size(); i++) {
            Box box = solids.get(i);
            shapes.add(Polygon.of(
                    CarPaper.box(x(CarPaper.m(box.x0())), z(box.z1()), x(CarPaper.m(box.x1())), z(box.z0())),
                    CarPaper.tint(piece, i).side(),
                    i == solids.size() - 1 ? CarPaper.SILHOUETTE : CarPaper.EDGE));
        }
        Box box = solids.get(solids.size() - 1);
        name(piece, CarPaper.box(x(CarPaper.m(box.x0())), z(box.z1()), x(CarPaper.m(box.x1())), z(box.z0())));
    }

    private void name(PlacedPiece piece, Bounds face) {
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(CarPaper.SMALL), Weight.MEDIUM);
        List<String> lines = wrap.lines(piece.name(), face.width() - 1.6);
        int most = (int) Math.floor((face.height() - 1) / 3.2);
        if (lines.size() > most || face.width() < LEAST_NAMED) {
            number(piece, new Spot(face.x0() + 2.2, face.y0() + 3.2));
            return;
        }
        double y = face.y0() + 3.2;
        for (String line : lines) {
            shapes.add(Lettering.in(
                    Lettering.of(line, new Spot(face.centre().x(), y), CarPaper.SMALL)
                            .with(Align.MIDDLE)
                            .with(Weight.MEDIUM),
                    Role.ON_TOP.colour()));
            y += 3.2;
        }
    }

    /** Its number in the table of positions. */
    private void number(PlacedPiece piece, Spot at) {
        shapes.add(Lettering.in(
                Lettering.bold(Integer.toString(load.pieces().indexOf(piece) + 1), at, CarPaper.SMALL)
                        .with(Align.MIDDLE),
                Role.ON_TOP.colour()));
    }

    private void chocks() {
        for (Block block : load.load().blocks()) {
            PlacedPiece piece = load.piece(block.what()).orElse(null);
            if (block.way() != Block.Way.CHOCKS || piece == null) {
                continue;
            }
            for (int place : piece.axlePlaces()) {
                for (int way : new int[] {-1, 1}) {
                    double near = x(CarPaper.m(place)) + way * scale * TYRE * 0.72;
                    double far = near + way * scale * 0.36;
                    shapes.add(new Polygon(
                            List.of(new Spot(near, floor - scale * 0.24), new Spot(far, floor), new Spot(near, floor)),
                            Tint.PLY.end(),
                            CarPaper.EDGE));
                }
            }
        }
    }

    /** Running distances from the rear end of the deck to the rear end of each piece. */
    private void distances() {
        double y = rail + 5.5;
        double last = -Double.MAX_VALUE;
        List<Integer> places = load.pieces().stream()
                .map(piece -> piece.box().x0())
                .distinct()
                .sorted()
                .toList();
        shapes.add(Lines.of(
                CarPaper.FINE,
                new Spot(x(0), y - 3),
                new Spot(x(CarPaper.m(load.car().deck().length())), y - 3)));
        shapes.add(new Circle(new Spot(x(0), y - 3), 0.7, null, CarPaper.EDGE));
        for (int place : places) {
            double at = x(CarPaper.m(place));
            shapes.add(Lines.of(CarPaper.FINE, new Spot(at, floor + scale * 0.42 + 0.5), new Spot(at, y - 2)));
            if (at - last > 9) {
                shapes.add(Lettering.muted(Numerals.mm(place), new Spot(at, y + 0.8), CarPaper.SMALL)
                        .with(Align.MIDDLE));
                last = at;
            }
        }
    }

    private void wheels() {
        CarStatics statics = CarStatics.of(load).orElse(null);
        if (statics == null || load.unknown().isPresent()) {
            return;
        }
        for (CarStatics.GroupLoad group : statics.groups()) {
            String text = group.group().name() + ", " + String.format(Locale.ROOT, "%.1f", group.kg() / 1000)
                    + Numerals.GAP + "t";
            Label label = Lettering.bold(
                            text, new Spot(x(CarPaper.m(group.group().x())), rail + UNDER + 1.2), 2)
                    .with(Align.MIDDLE);
            shapes.add(label);
        }
    }

    private void above() {
        TransitCar car = load.car();
        double length = CarPaper.m(car.deck().length());
        double half = CarPaper.m(car.deck().width()) / 2;
        shapes.add(
                Polygon.of(CarPaper.box(x(0), y(-half), x(length), y(half)), Tint.TIMBER.top(), CarPaper.SILHOUETTE));
        car.chockRails()
                .forEach(rail -> shapes.add(Polygon.of(
                        CarPaper.box(
                                x(CarPaper.m(rail.area().x0())),
                                across(rail.area().y0()),
                                x(CarPaper.m(rail.area().x1())),
                                across(rail.area().y1())),
                        null,
                        CarPaper.FINE)));
        List<PlacedPiece> up = load.pieces().stream()
                .sorted(Comparator.comparingInt(
                                (PlacedPiece piece) -> piece.box().z1())
                        .thenComparing(PlacedPiece::id))
                .toList();
        up.forEach(this::topOf);
        for (Provision anchor : car.anchors()) {
            shapes.add(new Circle(
                    new Spot(x(CarPaper.m(anchor.at().x())), across(anchor.at().y())),
                    0.45,
                    Role.RAISED.colour(),
                    CarPaper.EDGE));
        }
        Rope.of(leg, load).forEach(this::ropeAbove);
        shapes.add(Lines.of(CarPaper.CENTROID, new Spot(x(rear), middle), new Spot(x(length - rear), middle)));
        double foot = middle + scale * half + 4.5;
        shapes.add(Lettering.muted("rear", new Spot(x(0), foot), CarPaper.SMALL));
        shapes.add(Lettering.muted("front", new Spot(x(length), foot), CarPaper.SMALL)
                .with(Align.END));
        shapes.add(Lettering.muted(
                        "from the right and from above, scale " + scaleText() + ", mm from the rear end of the floor",
                        new Spot(x(length / 2), foot),
                        CarPaper.SMALL)
                .with(Align.MIDDLE));
    }

    private void topOf(PlacedPiece piece) {
        List<Box> solids = piece.solids();
        for (int i = 0; i < solids.size(); i++) {
            Box box = solids.get(i);
            shapes.add(Polygon.of(
                    CarPaper.box(x(CarPaper.m(box.x0())), across(box.y0()), x(CarPaper.m(box.x1())), across(box.y1())),
                    CarPaper.tint(piece, i).top(),
                    i == solids.size() - 1 ? CarPaper.SILHOUETTE : CarPaper.EDGE));
        }
        Point centre = piece.centre();
        if (centre != null) {
            shapes.addAll(CarPaper.centre(new Spot(x(CarPaper.m(centre.x())), across(centre.y()))));
        }
        Box box = solids.get(solids.size() - 1);
        number(piece, new Spot(x(CarPaper.m(box.x0())) + 2.2, across(box.y1()) + 3.2));
    }

    private void ropeAbove(Rope rope) {
        Spot foot = plan(rope.foot());
        Point second = rope.top2();
        Point other = rope.foot2();
        if (second == null || other == null) {
            shapes.addAll(CarPaper.lashing(plan(rope.top()), foot));
        } else {
            shapes.addAll(CarPaper.lashing(foot, plan(rope.top())));
            shapes.addAll(CarPaper.lashing(plan(rope.top()), plan(second)));
            shapes.addAll(CarPaper.lashing(plan(second), plan(other)));
        }
        boolean right = rope.foot().y() * 2 <= load.car().deck().width();
        key(rope.lashing().key(), foot.plus(0, right ? 2.6 : -1.2));
    }

    private void key(String text, Spot at) {
        shapes.add(Lettering.bold(text, at, 1.6).with(Align.MIDDLE));
    }

    private Spot plan(Point point) {
        return new Spot(x(CarPaper.m(point.x())), across(point.y()));
    }

    private Spot at(Point point) {
        return new Spot(x(CarPaper.m(point.x())), z(point.z()));
    }

    private double x(double metres) {
        return left + scale * (metres - rear);
    }

    private double z(int micrometres) {
        return floor - scale * CarPaper.m(micrometres);
    }

    /** Left is up on paper. */
    private double across(int micrometres) {
        return y(CarPaper.m(micrometres) - CarPaper.m(load.car().deck().width()) / 2);
    }

    private double y(double metres) {
        return middle - scale * metres;
    }
}
