package org.shelterwright.solver.fit.model;

import java.util.List;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Size;

/** The compiled limits between one unit and the body, as depths (µm) in one situation, as in the ledger. */
public final class BodyTerms {
    private static final Face[] FACES = Face.values();

    private final int[] inside;
    private final int[][] intrusions;
    private final int[] solids;
    private final int[][] swings;
    private final boolean[] exit;
    private final List<Opening> passages;

    BodyTerms(Body body) {
        Size size = body.inside();
        this.inside = new int[] {0, 0, 0, size.x(), size.y(), size.z()};
        this.intrusions = body.intrusions().stream()
                .map(Intrusion::box)
                .map(BodyTerms::six)
                .toArray(int[][]::new);
        this.solids = Shape.flat(body.intrusions().stream().map(Intrusion::box).toList());
        Opening[] inward =
                body.openings().stream().filter(o -> o.swing() != null).toArray(Opening[]::new);
        this.swings = new int[inward.length][];
        this.exit = new boolean[inward.length];
        for (int i = 0; i < inward.length; i++) {
            Box swing = inward[i].swing();
            swings[i] = swing == null ? new int[0] : six(swing);
            exit[i] = inward[i].exit();
        }
        this.passages = body.openings().stream()
                .filter(o -> o.kind() != Opening.Kind.WINDOW && o.wall().upright())
                .toList();
    }

    private static int[] six(Box box) {
        return new int[] {box.x0(), box.y0(), box.z0(), box.x1(), box.y1(), box.z1()};
    }

    /** The openings through which clear zones may reach. */
    List<Opening> passages() {
        return passages;
    }

    /** The solids of the body that stand into its inside, flat (six ints each). */
    public int[] solids() {
        return solids;
    }

    public int intrusions() {
        return intrusions.length;
    }

    /** Number of openings of which a leaf swings inward. */
    public int swings() {
        return swings.length;
    }

    /** How far solids reach beyond the inside of the body: the greatest over the faces. */
    public int outside(Shape shape, int x, int y, int z) {
        int[] hull = shape.hull();
        int low = Math.max(-x - hull[0], Math.max(-y - hull[1], -z - hull[2]));
        int high = Math.max(x + hull[3] - inside[3], Math.max(y + hull[4] - inside[4], z + hull[5] - inside[5]));
        return Math.max(0, Math.max(low, high));
    }

    /** Depth to which solids stand in one solid of the body. */
    public int intrusion(int number, Shape shape, int x, int y, int z) {
        return Depths.greatest(intrusions[number], shape.solids(), shape.hull(), x, y, z);
    }

    /** Depth to which solids stand in the way of one leaf. */
    public int doorBlocked(int number, Shape shape, int x, int y, int z) {
        return Depths.greatest(swings[number], shape.solids(), shape.hull(), x, y, z);
    }

    /** Depth to which movable parts move through the way of one leaf, if it is that of an exit. */
    public int exitCrossed(int number, Shape station, int x, int y, int z) {
        int worst = 0;
        for (int i = 0; i < station.purposes().length && exit[number]; i++) {
            if (station.purposes()[i] == Purpose.SWING) {
                worst = Math.max(worst, Depths.depth(swings[number], 0, station.zones(), 6 * i, x, y, z));
            }
        }
        return worst;
    }

    /** The length by which clear zones reach beyond walls other than through openings, or into solids of the body. */
    public int zonesInside(Shape shape, int x, int y, int z) {
        int worst = 0;
        int[] zones = shape.zones();
        for (int i = 0; i < zones.length; i += 6) {
            for (Face face : FACES) {
                int axis = face.axis().ordinal();
                int at = axis == 0 ? x : axis == 1 ? y : z;
                int beyond = face.sign() > 0 ? at + zones[i + 3 + axis] - inside[3 + axis] : -at - zones[i + axis];
                if (beyond > worst && !passes(face, zones, i, x, y, z)) {
                    worst = beyond;
                }
            }
            for (int[] intrusion : intrusions) {
                worst = Math.max(worst, Depths.depth(intrusion, 0, zones, i, x, y, z));
            }
        }
        return worst;
    }

    private boolean passes(Face wall, int[] zones, int i, int x, int y, int z) {
        for (Opening opening : passages) {
            if (opening.wall() == wall) {
                Axis along = wall.axis() == Axis.X ? Axis.Y : Axis.X;
                int at = along == Axis.X ? x : y;
                Box area = opening.area();
                if (area.low(along) <= at + zones[i + along.ordinal()]
                        && at + zones[i + 3 + along.ordinal()] <= area.high(along)
                        && area.z0() <= z + zones[i + 2]
                        && z + zones[i + 2] < area.z1()) {
                    return true;
                }
            }
        }
        return false;
    }
}
