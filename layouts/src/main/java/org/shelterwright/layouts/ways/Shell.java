package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/** The solids of a body itself with one of its openings open and all others shut. */
final class Shell {
    private Shell() {}

    /** Walls, floor, roof and intrusions; what is cut out of the wall of the opening reaches through its whole thickness. */
    static List<Box> solids(Body body, Opening open) {
        List<Box> solids = new ArrayList<>();
        for (Face face : Face.values()) {
            Box slab = slab(body, face);
            if (face == open.wall()) {
                solids.addAll(around(slab, open));
            } else {
                solids.add(slab);
            }
        }
        body.intrusions().stream().map(Intrusion::box).forEach(solids::add);
        return solids;
    }

    /** The slab between the inside and the outside at a face, over the whole outside. */
    static Box slab(Body body, Face face) {
        Box o = body.outside();
        Box in = body.inside().box();
        return switch (face) {
            case FRONT -> new Box(in.x1(), o.y0(), o.z0(), o.x1(), o.y1(), o.z1());
            case REAR -> new Box(o.x0(), o.y0(), o.z0(), in.x0(), o.y1(), o.z1());
            case LEFT -> new Box(o.x0(), in.y1(), o.z0(), o.x1(), o.y1(), o.z1());
            case RIGHT -> new Box(o.x0(), o.y0(), o.z0(), o.x1(), in.y0(), o.z1());
            case TOP -> new Box(o.x0(), o.y0(), in.z1(), o.x1(), o.y1(), o.z1());
            case BOTTOM -> new Box(o.x0(), o.y0(), o.z0(), o.x1(), o.y1(), in.z0());
        };
    }

    private static List<Box> around(Box slab, Opening open) {
        Box a = open.area();
        List<Box> pieces = new ArrayList<>();
        switch (open.wall().axis()) {
            case X -> {
                add(pieces, slab.x0(), slab.y0(), slab.z0(), slab.x1(), a.y0(), slab.z1());
                add(pieces, slab.x0(), a.y1(), slab.z0(), slab.x1(), slab.y1(), slab.z1());
                add(pieces, slab.x0(), a.y0(), slab.z0(), slab.x1(), a.y1(), a.z0());
                add(pieces, slab.x0(), a.y0(), a.z1(), slab.x1(), a.y1(), slab.z1());
            }
            case Y -> {
                add(pieces, slab.x0(), slab.y0(), slab.z0(), a.x0(), slab.y1(), slab.z1());
                add(pieces, a.x1(), slab.y0(), slab.z0(), slab.x1(), slab.y1(), slab.z1());
                add(pieces, a.x0(), slab.y0(), slab.z0(), a.x1(), slab.y1(), a.z0());
                add(pieces, a.x0(), slab.y0(), a.z1(), a.x1(), slab.y1(), slab.z1());
            }
            case Z -> {
                add(pieces, slab.x0(), slab.y0(), slab.z0(), a.x0(), slab.y1(), slab.z1());
                add(pieces, a.x1(), slab.y0(), slab.z0(), slab.x1(), slab.y1(), slab.z1());
                add(pieces, a.x0(), slab.y0(), slab.z0(), a.x1(), a.y0(), slab.z1());
                add(pieces, a.x0(), a.y1(), slab.z0(), a.x1(), slab.y1(), slab.z1());
            }
        }
        return pieces;
    }

    private static void add(List<Box> pieces, int x0, int y0, int z0, int x1, int y1, int z1) {
        if (x0 <= x1 && y0 <= y1 && z0 <= z1) {
            pieces.add(new Box(x0, y0, z0, x1, y1, z1));
        }
    }
}
