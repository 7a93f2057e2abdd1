package org.shelterwright.app.journey;

import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Where the places of a loaded car come to lie on paper, seen from its right side and, below, from above. Left is up there. */
final class LongScale {
    static final double UNDER = 10;

    private static final double BETWEEN = 9;

    private final PlacedLoad load;
    private final double scale;
    private final double left;
    private final double rear;
    private final double rail;
    private final double floor;
    private final double middle;

    LongScale(PlacedLoad load, Bounds paper) {
        double over = overhang(load.car());
        this.load = load;
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
                + 16;
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

    double scale() {
        return scale;
    }

    /** Where the car begins, behind its floor (m; below zero). */
    double rear() {
        return rear;
    }

    /** Height of the rail or ground on paper (mm). */
    double rail() {
        return rail;
    }

    /** Height of the floor on paper (mm). */
    double floor() {
        return floor;
    }

    /** Height of the middle line, seen from above (mm). */
    double middle() {
        return middle;
    }

    /** A place seen from above. */
    Spot plan(Point point) {
        return new Spot(x(CarPaper.m(point.x())), across(point.y()));
    }

    /** A place seen from the side. */
    Spot at(Point point) {
        return new Spot(x(CarPaper.m(point.x())), z(point.z()));
    }

    double x(double metres) {
        return left + scale * (metres - rear);
    }

    double z(int micrometres) {
        return floor - scale * CarPaper.m(micrometres);
    }

    double across(int micrometres) {
        return y(CarPaper.m(micrometres) - CarPaper.m(load.car().deck().width()) / 2);
    }

    double y(double metres) {
        return middle - scale * metres;
    }
}
