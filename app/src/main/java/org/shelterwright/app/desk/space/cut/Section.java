package org.shelterwright.app.desk.space.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.drawing.Hatch;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Trace;
import org.shelterwright.app.view.Weights;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A plane square to an axis that takes away what lies on one side of it.
 *
 * @param at place of the plane on the axis (µm)
 * @param away the face of the body towards which everything is taken away
 */
public record Section(int at, Face away) {
    /** Pitch of the hatch on cut faces, in the space (mm). */
    private static final double PITCH = 34;

    public Axis axis() {
        return away.axis();
    }

    public Section moved(int to) {
        return new Section(to, away);
    }

    /** The part of a cuboid that remains; empty if nothing with a volume does. */
    public Optional<Box> cut(Box box) {
        int low = away.sign() > 0 ? box.low(axis()) : Math.max(box.low(axis()), at);
        int high = away.sign() > 0 ? Math.min(box.high(axis()), at) : box.high(axis());
        return low < high
                ? Optional.of(
                        Box.between(box.low().with(axis(), low), box.high().with(axis(), high)))
                : Optional.empty();
    }

    /** Whether the plane runs through a cuboid. */
    public boolean crosses(Box box) {
        return box.low(axis()) < at && at < box.high(axis());
    }

    /** Whether a place is left. */
    public boolean leaves(Point point) {
        return away.sign() > 0 ? point.along(axis()) <= at : point.along(axis()) >= at;
    }

    /** What remains of blocks and of the detail on them. */
    public List<Block> blocks(List<Block> blocks) {
        List<Block> left = new ArrayList<>();
        for (Block block : blocks) {
            cut(block.box())
                    .ifPresent(box -> left.add(new Block(block.owner(), box, block.shade(), traces(block.traces()))));
        }
        return left;
    }

    /** What remains of lines. */
    public List<Trace> traces(List<Trace> traces) {
        List<Trace> left = new ArrayList<>();
        for (Trace trace : traces) {
            List<Point> piece = new ArrayList<>();
            for (int i = 0; i < trace.points().size(); i++) {
                Point point = trace.points().get(i);
                if (i > 0 && leaves(point) != leaves(trace.points().get(i - 1))) {
                    piece.add(through(trace.points().get(i - 1), point));
                    if (!leaves(point)) {
                        left.add(new Trace(piece, trace.pen()));
                        piece = new ArrayList<>();
                    }
                }
                if (leaves(point)) {
                    piece.add(point);
                }
            }
            if (piece.size() > 1) {
                left.add(new Trace(piece, trace.pen()));
            }
        }
        return left;
    }

    /** What remains of convex patches. */
    public List<Facet> facets(List<Facet> facets) {
        List<Facet> left = new ArrayList<>();
        for (Facet facet : facets) {
            List<Point> ring = new ArrayList<>();
            for (int i = 0; i < facet.corners().size(); i++) {
                Point a = facet.corners().get(i);
                Point b = facet.corners().get((i + 1) % facet.corners().size());
                if (leaves(a)) {
                    ring.add(a);
                }
                if (leaves(a) != leaves(b)) {
                    ring.add(through(a, b));
                }
            }
            if (ring.size() > 2) {
                left.add(new Facet(ring, facet.colour()));
            }
        }
        return left;
    }

    /** Where the way between two places on either side meets the plane. */
    private Point through(Point a, Point b) {
        double share = (double) (at - a.along(axis())) / (b.along(axis()) - a.along(axis()));
        return new Point(
                        (int) Math.round(a.x() + (b.x() - a.x()) * share),
                        (int) Math.round(a.y() + (b.y() - a.y()) * share),
                        (int) Math.round(a.z() + (b.z() - a.z()) * share))
                .with(axis(), at);
    }

    /** The cut face of each block that the plane runs through. */
    public List<Facet> caps(List<Block> blocks) {
        return blocks.stream()
                .filter(block -> crosses(block.box()))
                .map(block -> new Facet(ring(block.box()), Role.RAISED.colour()))
                .toList();
    }

    /** Outline and hatch of the cut faces. */
    public List<Trace> hatch(List<Block> blocks) {
        List<Trace> traces = new ArrayList<>();
        for (Block block : blocks) {
            if (crosses(block.box())) {
                List<Point> ring = new ArrayList<>(ring(block.box()));
                List<Spot> flat = ring.stream().map(this::flat).toList();
                for (List<Spot> line : new Hatch(flat, 45, PITCH, Weights.HATCH).lines()) {
                    traces.add(new Trace(line.stream().map(this::place).toList(), Weights.HATCH));
                }
                ring.add(ring.get(0));
                traces.add(new Trace(ring, Weights.CUT));
            }
        }
        return traces;
    }

    private List<Point> ring(Box box) {
        int lift = away.sign() * 500;
        return Block.corners(box, away).stream()
                .map(point -> point.with(axis(), at + lift))
                .toList();
    }

    private Spot flat(Point p) {
        return switch (axis()) {
            case X -> new Spot(p.y() * 1e-3, p.z() * 1e-3);
            case Y -> new Spot(p.x() * 1e-3, p.z() * 1e-3);
            case Z -> new Spot(p.x() * 1e-3, p.y() * 1e-3);
        };
    }

    private Point place(Spot s) {
        int u = (int) Math.round(s.x() * 1e3);
        int v = (int) Math.round(s.y() * 1e3);
        int w = at + away.sign() * 500;
        return switch (axis()) {
            case X -> new Point(w, u, v);
            case Y -> new Point(u, w, v);
            case Z -> new Point(u, v, w);
        };
    }
}
