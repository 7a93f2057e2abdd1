package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Hatch;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/** How a body looks when its roof and near walls are cut away: floor, far walls, openings, rails and trays. */
public final class RoomLook {

    private static final int POST = 200 * Lengths.MM;
    private static final int LIFT = Lengths.MM;
    private static final double HATCH_PITCH = 34;
    private static final Colour CUT = Role.SIDE_WALL.colour();

    private final Body body;
    private final Axonometry view;
    private final List<Block> shell = new ArrayList<>();
    private final List<Block> solids = new ArrayList<>();
    private final List<Facet> facets = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();

    public RoomLook(Body body, Axonometry view) {
        this.body = body;
        this.view = view;
        floor();
        for (Face wall : List.of(Face.REAR, Face.FRONT, Face.RIGHT, Face.LEFT)) {
            if (far(wall)) {
                wall(wall);
            }
        }
        corner();
        body.openings().forEach(this::opening);
        body.grids().forEach(this::rail);
        body.trays().forEach(this::tray);
        body.intrusions().forEach(this::intrusion);
    }

    /** Floor and far walls: behind everything else. */
    public List<Block> shell() {
        return shell;
    }

    /** Solids of the body that stand among the units. */
    public List<Block> solids() {
        return solids;
    }

    public List<Facet> facets() {
        return facets;
    }

    public List<Trace> traces() {
        return traces;
    }

    /** The shadow that the body casts on the ground. */
    public Facet shadow() {
        Box o = body.outside().grown(90_000, 90_000, 0);
        return new Facet(Block.corners(o, Face.BOTTOM), Colour.BLACK.with(0.06));
    }

    /** Whether the inner side of a wall looks towards the viewer. */
    private boolean far(Face wall) {
        return view.sees(wall.opposite());
    }

    private void floor() {
        Box o = body.outside();
        int z0 = Math.max(o.z0(), -120 * Lengths.MM);
        Colour slab = Role.SURFACE.colour();
        Shade shade = new Shade(
                Role.FLOOR.colour(), slab.mixed(Role.EDGE.colour(), 0.04), slab.mixed(Role.EDGE.colour(), 0.12));
        shell.add(new Block("", new Box(o.x0(), o.y0(), z0, o.x1(), o.y1(), 0), shade, List.of()));
    }

    private void wall(Face wall) {
        Box o = body.outside();
        Box in = body.inside().box();
        int top = in.z1();
        Box box = switch (wall) {
            case REAR -> new Box(o.x0(), o.y0(), 0, 0, o.y1(), top);
            case FRONT -> new Box(in.x1(), o.y0(), 0, o.x1(), o.y1(), top);
            case RIGHT -> new Box(o.x0(), o.y0(), 0, o.x1(), 0, top);
            default -> new Box(o.x0(), in.y1(), 0, o.x1(), o.y1(), top);
        };
        Colour face = (wall.axis() == Axis.X ? Role.WALL : Role.SIDE_WALL).colour();
        shell.add(new Block("", box, new Shade(CUT, face, face), List.of()));
        hatch(box);
    }

    /** The upright line where the two far walls meet inside. */
    private void corner() {
        Box in = body.inside().box();
        Point foot = new Point(far(Face.FRONT) ? in.x1() : 0, far(Face.LEFT) ? in.y1() : 0, 0);
        traces.add(new Trace(List.of(foot, foot.with(Axis.Z, in.z1())), Weights.EDGE));
    }

    private void hatch(Box cut) {
        int z = cut.z1() + LIFT;
        List<Spot> ring = Block.corners(cut, Face.TOP).stream()
                .map(p -> new Spot(p.x() * 1e-3, -p.y() * 1e-3))
                .toList();
        for (List<Spot> line : new Hatch(ring, -45, HATCH_PITCH, Weights.HATCH).lines()) {
            traces.add(new Trace(
                    line.stream()
                            .map(s -> new Point((int) Math.round(s.x() * 1e3), (int) Math.round(-s.y() * 1e3), z))
                            .toList(),
                    Weights.HATCH));
        }
    }

    private void opening(Opening opening) {
        if (far(opening.wall())) {
            int lift = -opening.wall().sign() * LIFT;
            Box a = opening.area();
            Box flat = opening.wall().axis() == Axis.X ? a.moved(lift, 0, 0) : a.moved(0, lift, 0);
            List<Point> ring = Block.corners(flat, opening.wall());
            facets.add(new Facet(ring, Role.RAISED.colour()));
            traces.add(new Trace(closed(ring), Weights.EDGE));
        } else if (opening.kind() == Opening.Kind.DOOR) {
            posts(opening);
        }
        if (opening.kind() == Opening.Kind.DOOR && opening.wall().upright()) {
            swing(opening);
        }
    }

    /** What remains of a near wall: two short posts beside the door. */
    private void posts(Opening door) {
        Box a = door.area();
        for (Point foot : List.of(a.low(), a.low().with(across(door), a.high(across(door))))) {
            traces.add(new Trace(List.of(foot, foot.with(Axis.Z, foot.z() + POST)), Weights.SILHOUETTE));
        }
    }

    private void swing(Opening door) {
        Optional<DoorSwing> leaf = DoorSwing.of(body, door);
        Box swing = door.swing();
        if (leaf.isPresent()) {
            leaf(leaf.get());
        } else if (swing != null) {
            traces.add(new Trace(
                    closed(Block.corners(swing, Face.BOTTOM)), Weights.ZONE.with(LineType.LONG_DASH_DOUBLE_DOT)));
        }
    }

    private void leaf(DoorSwing leaf) {
        List<Point> disc = new ArrayList<>(leaf.arc());
        disc.add(leaf.hinge());
        facets.add(new Facet(disc, Role.ZONE.colour().with(0.07)));
        traces.add(new Trace(leaf.arc(), Weights.ZONE.with(LineType.LONG_DASH_DOUBLE_DOT)));
        traces.add(new Trace(List.of(leaf.hinge(), leaf.end()), Weights.LEAF));
    }

    private void rail(HoleGrid grid) {
        Face surface = grid.surface();
        if (surface != Face.BOTTOM && !(surface.upright() && far(surface))) {
            return;
        }
        for (int row = 0; row < grid.rows(); row++) {
            if (grid.rows() == 1) {
                traces.add(new Trace(
                        List.of(lifted(grid.hole(0, row), surface), lifted(grid.hole(grid.count() - 1, row), surface)),
                        Weights.RAIL));
            }
            for (int i = 0; i < grid.count(); i++) {
                Point hole = lifted(grid.hole(i, row), surface);
                Point half = hole.with(grid.along(), hole.along(grid.along()) + 5_000);
                traces.add(new Trace(List.of(hole, half), grid.rows() == 1 ? Weights.EDGE : Weights.RAIL));
            }
        }
    }

    private static Point lifted(Point point, Face surface) {
        return point.with(surface.axis(), point.along(surface.axis()) - surface.sign() * LIFT);
    }

    /** The parts of a tray that lie along a far wall; those at the roof or a near wall are cut away with it. */
    private void tray(Tray tray) {
        for (int i = 0; i + 1 < tray.path().size(); i++) {
            Point a = tray.path().get(i);
            Point b = tray.path().get(i + 1);
            if (atFarWall(a, tray.width()) && atFarWall(b, tray.width())) {
                traces.add(new Trace(List.of(a, b), Weights.RAIL));
            }
        }
    }

    private boolean atFarWall(Point point, int within) {
        Box in = body.inside().box();
        for (Face wall : List.of(Face.REAR, Face.FRONT, Face.RIGHT, Face.LEFT)) {
            int at = wall.sign() > 0 ? in.high(wall.axis()) : in.low(wall.axis());
            if (far(wall) && Math.abs(point.along(wall.axis()) - at) <= within) {
                return true;
            }
        }
        return false;
    }

    private void intrusion(Intrusion intrusion) {
        solids.add(new Block("", intrusion.box(), Shade.of(Tint.ENAMEL), List.of()));
    }

    private static Axis across(Opening door) {
        return door.wall().axis() == Axis.X ? Axis.Y : Axis.X;
    }

    private static List<Point> closed(List<Point> ring) {
        List<Point> closed = new ArrayList<>(ring);
        closed.add(ring.get(0));
        return closed;
    }
}
