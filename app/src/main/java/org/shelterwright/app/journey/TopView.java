package org.shelterwright.app.journey;

import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.transport.securing.Rope;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** A loaded car from above: floor, pieces, anchor points, lashings with their keys. */
final class TopView {
    /** Paper between a number and a lashing (mm). */
    private static final double CLEAR_OF_LASHING = 1.9;

    private final LegScene leg;
    private final PlacedLoad load;
    private final LongScale on;
    private final List<Shape> shapes;
    private final PieceNames names;

    TopView(Typeface typeface, LegScene leg, PlacedLoad load, LongScale on, List<Shape> shapes) {
        this.leg = leg;
        this.load = load;
        this.on = on;
        this.shapes = shapes;
        this.names = new PieceNames(typeface, load, shapes);
    }

    void draw() {
        TransitCar car = load.car();
        double length = CarPaper.m(car.deck().length());
        double half = CarPaper.m(car.deck().width()) / 2;
        shapes.add(Polygon.of(
                CarPaper.box(on.x(0), on.y(-half), on.x(length), on.y(half)), Tint.TIMBER.top(), CarPaper.SILHOUETTE));
        car.chockRails()
                .forEach(strip -> shapes.add(Polygon.of(
                        CarPaper.box(
                                on.x(CarPaper.m(strip.area().x0())),
                                on.across(strip.area().y0()),
                                on.x(CarPaper.m(strip.area().x1())),
                                on.across(strip.area().y1())),
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
                    new Spot(
                            on.x(CarPaper.m(anchor.at().x())),
                            on.across(anchor.at().y())),
                    0.45,
                    Role.RAISED.colour(),
                    CarPaper.EDGE));
        }
        List<Rope> ropes = Rope.of(leg, load);
        ropes.forEach(this::ropeAbove);
        marks(up, ropes);
        shapes.add(Lines.of(
                CarPaper.CENTROID,
                new Spot(on.x(on.rear()), on.middle()),
                new Spot(on.x(length - on.rear()), on.middle())));
        double foot = on.middle() + on.scale() * half + 6.5;
        shapes.add(Lettering.muted("rear", new Spot(on.x(0), foot), CarPaper.SMALL));
        shapes.add(Lettering.muted("front", new Spot(on.x(length), foot), CarPaper.SMALL)
                .with(Align.END));
        shapes.add(Lettering.muted(
                        "from the right and from above, scale " + "1:" + Math.round(1000 / on.scale())
                                + ", mm from the rear end of the floor",
                        new Spot(on.x(length / 2), foot),
                        CarPaper.SMALL)
                .with(Align.MIDDLE));
    }

    private void topOf(PlacedPiece piece) {
        List<Box> solids = piece.solids();
        for (int i = 0; i < solids.size(); i++) {
            Box box = solids.get(i);
            shapes.add(Polygon.of(
                    CarPaper.box(
                            on.x(CarPaper.m(box.x0())),
                            on.across(box.y0()),
                            on.x(CarPaper.m(box.x1())),
                            on.across(box.y1())),
                    PieceTint.of(piece, i).top(),
                    i == solids.size() - 1 ? CarPaper.SILHOUETTE : CarPaper.EDGE));
        }
    }

    /** Centres and numbers over all lines, of what no higher piece hides. */
    private void marks(List<PlacedPiece> up, List<Rope> ropes) {
        for (int i = 0; i < up.size(); i++) {
            PlacedPiece piece = up.get(i);
            List<PlacedPiece> higher = up.subList(i + 1, up.size());
            Point centre = piece.centre();
            if (centre != null && higher.stream().noneMatch(one -> covers(one.box(), centre.x(), centre.y()))) {
                shapes.addAll(CarPaper.centre(new Spot(on.x(CarPaper.m(centre.x())), on.across(centre.y()))));
            }
            Box box = piece.solids().get(piece.solids().size() - 1);
            int x = numberAt(box, ropes);
            if (higher.stream().noneMatch(one -> covers(one.box(), x, box.y1() - 1))) {
                names.number(
                        piece,
                        new Spot(on.x(CarPaper.m(x)), on.across(box.y1()) + 2.5),
                        PieceTint.of(piece, piece.solids().size() - 1).top());
            }
        }
    }

    private static boolean covers(Box box, int x, int y) {
        return box.x0() <= x && x < box.x1() && box.y0() <= y && y < box.y1();
    }

    /** Where along its face a number has no lashing under it: in the middle, else beside it. */
    private int numberAt(Box box, List<Rope> ropes) {
        int length = box.x1() - box.x0();
        for (double share : new double[] {0.5, 0.25, 0.75}) {
            int x = box.x0() + (int) (share * length);
            boolean free = ropes.stream()
                    .allMatch(
                            rope -> on.scale() * CarPaper.m(Math.abs(rope.top().x() - x)) > CLEAR_OF_LASHING);
            if (free) {
                return x;
            }
        }
        return box.x0() + length / 2;
    }

    private void ropeAbove(Rope rope) {
        Spot foot = on.plan(rope.foot());
        Point second = rope.top2();
        Point other = rope.foot2();
        if (second == null || other == null) {
            shapes.addAll(CarPaper.lashing(on.plan(rope.top()), foot));
        } else {
            shapes.addAll(CarPaper.lashing(foot, on.plan(rope.top())));
            shapes.addAll(CarPaper.lashing(on.plan(rope.top()), on.plan(second)));
            shapes.addAll(CarPaper.lashing(on.plan(second), on.plan(other)));
        }
        boolean right = rope.foot().y() * 2 <= load.car().deck().width();
        key(rope.lashing().key(), foot.plus(0, right ? 3 : -1.4));
    }

    private void key(String text, Spot at) {
        shapes.add(Lettering.bold(text, at, 1.6).with(Align.MIDDLE));
    }
}
