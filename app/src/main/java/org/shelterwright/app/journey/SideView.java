package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
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

/** A loaded car from its right side: frame, pieces, chocks, lashings of the right side, distances, what its wheels bear. */
final class SideView {
    private static final double WHEEL = 0.46;
    private static final double TYRE = 0.42;

    private final LegScene leg;
    private final PlacedLoad load;
    private final LongScale on;
    private final List<Shape> shapes;
    private final PieceNames names;

    SideView(Typeface typeface, LegScene leg, PlacedLoad load, LongScale on, List<Shape> shapes) {
        this.leg = leg;
        this.load = load;
        this.on = on;
        this.shapes = shapes;
        this.names = new PieceNames(typeface, load, shapes);
    }

    void draw() {
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
                    shapes.addAll(CarPaper.lashing(on.at(from), on.at(rope.foot())));
                } else {
                    shapes.addAll(CarPaper.lashing(on.at(rope.foot()), on.at(new Point(from.x(), 0, from.z()))));
                }
            }
        }
        far.forEach(piece -> {
            Point centre = piece.centre();
            if (centre != null) {
                shapes.addAll(CarPaper.centre(on.at(centre)));
            }
        });
        names(far);
        distances();
        wheels();
    }

    private void frame() {
        TransitCar car = load.car();
        double length = CarPaper.m(car.deck().length());
        shapes.add(Lines.of(
                Pen.of(0.35, Role.LINES.colour()),
                new Spot(on.x(on.rear()), on.rail()),
                new Spot(on.x(length - on.rear()), on.rail())));
        if (!car.wheels().isEmpty()) {
            for (WheelGroup group : car.wheels()) {
                for (double wheel : places(group)) {
                    shapes.add(new Circle(
                            new Spot(on.x(wheel), on.rail() - on.scale() * WHEEL),
                            on.scale() * WHEEL,
                            Tint.RUBBER.side(),
                            CarPaper.EDGE));
                }
            }
            shapes.add(Polygon.of(
                    CarPaper.box(on.x(on.rear()), on.floor(), on.x(length - on.rear()), on.floor() + on.scale() * 0.42),
                    Tint.STEEL.end(),
                    CarPaper.EDGE));
        }
        shapes.add(Polygon.of(
                CarPaper.box(on.x(0), on.floor(), on.x(length), on.floor() + on.scale() * 0.12),
                Tint.TIMBER.side(),
                CarPaper.SILHOUETTE));
        Integer clear = car.deck().clearHeight();
        if (clear != null) {
            shapes.add(Polygon.of(
                    CarPaper.box(on.x(0), on.floor() - on.scale() * CarPaper.m(clear), on.x(length), on.floor()),
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
                    new Spot(on.x(CarPaper.m(place)), on.floor() - on.scale() * TYRE),
                    on.scale() * TYRE,
                    Tint.RUBBER.side(),
                    CarPaper.EDGE));
        }
        List<Box> solids = piece.solids();
        for (int i = 0; i < solids.size(); i++) {
            Box box = solids.get(i);
            shapes.add(Polygon.of(
                    CarPaper.box(
                            on.x(CarPaper.m(box.x0())), on.z(box.z1()), on.x(CarPaper.m(box.x1())), on.z(box.z0())),
                    PieceTint.of(piece, i).side(),
                    i == solids.size() - 1 ? CarPaper.SILHOUETTE : CarPaper.EDGE));
        }
    }

    /** Names over all lines, of what no nearer piece hides. */
    private void names(List<PlacedPiece> far) {
        for (int i = 0; i < far.size(); i++) {
            PlacedPiece piece = far.get(i);
            List<Box> solids = piece.solids();
            int last = solids.size() - 1;
            Box box = solids.get(last);
            boolean hidden = far.subList(i + 1, far.size()).stream().anyMatch(nearer -> hides(nearer.box(), box));
            if (!hidden) {
                names.name(
                        piece,
                        CarPaper.box(
                                on.x(CarPaper.m(box.x0())), on.z(box.z1()), on.x(CarPaper.m(box.x1())), on.z(box.z0())),
                        PieceTint.of(piece, last).side());
            }
        }
    }

    /** Whether the upper middle of a cuboid, where its name stands, lies behind another. */
    private static boolean hides(Box nearer, Box box) {
        int x = box.x0() + (box.x1() - box.x0()) / 2;
        return nearer.x0() < x && x < nearer.x1() && nearer.z1() >= box.z1() && nearer.z0() < box.z1();
    }

    private void chocks() {
        for (Block block : load.load().blocks()) {
            PlacedPiece piece = load.piece(block.what()).orElse(null);
            if (block.way() != Block.Way.CHOCKS || piece == null) {
                continue;
            }
            for (int place : piece.axlePlaces()) {
                for (int way : new int[] {-1, 1}) {
                    double near = on.x(CarPaper.m(place)) + way * on.scale() * TYRE * 0.72;
                    double far = near + way * on.scale() * 0.36;
                    shapes.add(new Polygon(
                            List.of(
                                    new Spot(near, on.floor() - on.scale() * 0.24),
                                    new Spot(far, on.floor()),
                                    new Spot(near, on.floor())),
                            Tint.PLY.end(),
                            CarPaper.EDGE));
                }
            }
        }
    }

    /** Running distances from the on.rear() end of the deck to the on.rear() end of each piece. */
    private void distances() {
        double y = on.rail() + 5.5;
        double last = -Double.MAX_VALUE;
        List<Integer> places = load.pieces().stream()
                .map(piece -> piece.box().x0())
                .distinct()
                .sorted()
                .toList();
        shapes.add(Lines.of(
                CarPaper.FINE,
                new Spot(on.x(0), y - 3),
                new Spot(on.x(CarPaper.m(load.car().deck().length())), y - 3)));
        shapes.add(new Circle(new Spot(on.x(0), y - 3), 0.7, null, CarPaper.EDGE));
        for (int place : places) {
            double at = on.x(CarPaper.m(place));
            shapes.add(
                    Lines.of(CarPaper.FINE, new Spot(at, on.floor() + on.scale() * 0.42 + 0.5), new Spot(at, y - 2)));
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
                            text, new Spot(on.x(CarPaper.m(group.group().x())), on.rail() + LongScale.UNDER + 1.2), 2)
                    .with(Align.MIDDLE);
            shapes.add(label);
        }
    }
}
