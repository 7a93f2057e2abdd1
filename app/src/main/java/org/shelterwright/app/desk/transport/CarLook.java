package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.space.solid.Thing;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Shade;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.Stop;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;

/**
 * A transit car as a thing of the scene, in its own frame: floor, frame, wheels, rails or road, and the edges of its inside. Sizes that
 * its sheet does not state (frame, wheels) are for the eye only.
 */
final class CarLook {
    private static final int FLOOR = 120_000;
    private static final int FRAME = 300_000;
    private static final int WAGON_WHEEL = 460_000;
    private static final int ROAD_WHEEL = 500_000;
    private static final int BOARD = 60_000;
    private static final int SLEEPER = 650_000;
    private static final Pen INSIDE = Pen.of(0.35, Role.EDGE.colour());
    private static final Pen BOARDS = Pen.of(0.18, Role.EDGE.colour().with(0.35));
    private static final Pen DOOR = Pen.of(0.45, Role.ZONE.colour()).with(LineType.DASHED);
    private static final Pen RING = Pen.of(0.3, Role.EDGE.colour());

    private final TransitCar car;
    private final int length;
    private final int width;
    private final int over;
    private final int ground;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Facet> facets = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();

    private CarLook(TransitCar car) {
        this.car = car;
        length = car.deck().length();
        width = car.deck().width();
        Integer outer = car.lengthOver();
        over = outer == null || !car.kind().wagon() ? 0 : Math.max(0, (outer - length) / 2);
        Integer highest = car.deck().highest();
        ground = highest == null || car.wheels().isEmpty() ? -FLOOR - 20_000 : -highest;
    }

    static Thing of(TransitCar car, String id) {
        return new CarLook(car).made(id);
    }

    /** The least cuboid around a car, from the rail or road up. */
    static Box bounds(TransitCar car) {
        CarLook look = new CarLook(car);
        Integer clear = car.deck().clearHeight();
        return new Box(-look.over, 0, look.ground, look.length + look.over, look.width, clear == null ? 0 : clear);
    }

    private Thing made(String id) {
        floor();
        if (!car.wheels().isEmpty()) {
            wheels();
        }
        if (car.kind().wagon()) {
            track();
        } else {
            shadow();
        }
        Integer clear = car.deck().clearHeight();
        if (clear != null) {
            inside(clear);
        } else {
            headboards();
        }
        anchors();
        return new Thing(id, blocks, facets, traces);
    }

    private void floor() {
        block(new Box(0, 0, -FLOOR, length, width, 0), Tint.TIMBER);
        for (int x = 600_000; x < length; x += 600_000) {
            traces.add(new Trace(List.of(new Point(x, 0, 0), new Point(x, width, 0)), BOARDS));
        }
        if (!car.wheels().isEmpty()) {
            int in = width / 8;
            block(new Box(-over, in, -FLOOR - FRAME, length + over, width - in, -FLOOR), Tint.STEEL);
        }
    }

    private void wheels() {
        boolean wagon = car.kind().wagon();
        int radius = Math.min(wagon ? WAGON_WHEEL : ROAD_WHEEL, Math.max(200_000, -ground - FLOOR));
        RoundLook round = new RoundLook();
        for (WheelGroup group : car.wheels()) {
            for (int i = 0; i < group.axles(); i++) {
                double off = group.axles() == 1 ? 0 : (double) i / (group.axles() - 1) - 0.5;
                int x = group.x() + (int) Math.round(off * group.spacing());
                for (int side : new int[] {-1, 1}) {
                    round.wheel(
                            new Point(x, width / 2 + side * group.contact() / 2, ground + radius),
                            radius,
                            wagon ? 120_000 : 280_000,
                            wagon ? Tint.STEEL : Tint.RUBBER,
                            place -> place);
                }
            }
        }
        facets.addAll(round.facets());
        traces.addAll(round.traces());
    }

    private void track() {
        int beyond = 900_000;
        int half = 750_000;
        int low = ground - 30_000;
        for (int x = -over - beyond; x < length + over + beyond; x += SLEEPER) {
            patch(x, width / 2 - 1_300_000, x + 240_000, width / 2 + 1_300_000, low - 60_000, Role.LINE);
        }
        for (int side : new int[] {-1, 1}) {
            int y = width / 2 + side * half;
            block(new Box(-over - beyond, y - 35_000, low, length + over + beyond, y + 35_000, ground), Tint.STEEL);
        }
    }

    private void shadow() {
        patch(-400_000, -400_000, length + 400_000, width + 400_000, ground, Role.TRACK);
    }

    /** Edges of the space above the floor, and its doorways. */
    private void inside(int clear) {
        for (int y : new int[] {0, width}) {
            line(INSIDE, new Point(0, y, clear), new Point(length, y, clear));
            for (int x : new int[] {0, length}) {
                line(INSIDE, new Point(x, y, 0), new Point(x, y, clear));
            }
        }
        for (int x : new int[] {0, length}) {
            line(INSIDE, new Point(x, 0, clear), new Point(x, width, clear));
        }
        car.doorways().forEach(door -> {
            Box wall = new Box(0, 0, 0, length, width, clear).face(door.wall());
            boolean end = door.wall() == Face.REAR || door.wall() == Face.FRONT;
            int across = end ? width : length;
            int from = Math.max(0, (across - door.width()) / 2);
            int to = Math.min(across, from + door.width());
            int up = Math.min(clear, door.height());
            Point a = end ? new Point(wall.x0(), from, 0) : new Point(from, wall.y0(), 0);
            Point b = end ? new Point(wall.x0(), to, 0) : new Point(to, wall.y0(), 0);
            Point lift = new Point(0, 0, up);
            line(DOOR, a, a.plus(lift));
            line(DOOR, a.plus(lift), b.plus(lift));
            line(DOOR, b.plus(lift), b);
        });
    }

    /** Headboards of open cars, as low boards. */
    private void headboards() {
        for (Stop stop : car.stops()) {
            int x = stop.side() == Face.FRONT ? length : stop.side() == Face.REAR ? -BOARD : Integer.MIN_VALUE;
            if (x != Integer.MIN_VALUE) {
                block(new Box(x, 0, -FLOOR, x + BOARD, width, 600_000), Tint.STEEL);
            }
        }
    }

    private void anchors() {
        for (Provision anchor : car.anchors()) {
            Point at = anchor.at();
            int r = 45_000;
            traces.add(new Trace(
                    List.of(
                            at.plus(new Point(-r, 0, 0)),
                            at.plus(new Point(0, -r, 0)),
                            at.plus(new Point(r, 0, 0)),
                            at.plus(new Point(0, r, 0)),
                            at.plus(new Point(-r, 0, 0))),
                    RING));
        }
    }

    private void block(Box box, Tint tint) {
        blocks.add(new Block("", box, Shade.of(tint), List.of()));
    }

    private void line(Pen pen, Point from, Point to) {
        traces.add(new Trace(List.of(from, to), pen));
    }

    private void patch(int x0, int y0, int x1, int y1, int z, Role role) {
        facets.add(new Facet(
                List.of(new Point(x0, y0, z), new Point(x1, y0, z), new Point(x1, y1, z), new Point(x0, y1, z)),
                role.colour()));
    }
}
