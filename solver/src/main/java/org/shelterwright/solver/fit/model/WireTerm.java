package org.shelterwright.solver.fit.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.solver.route.TrayTable;

/**
 * How long a wire comes out between two slots on station, or from a slot to an entry panel: straight along the axes, or by the
 * trays that are nearest to its ends, whichever is shorter. Units in the way are not seen, so it is a little too short.
 *
 * @param a slot
 * @param b other slot; -1 if the wire ends at a panel
 * @param portA port in the frame of the item of {@code a}
 * @param portB port in the frame of the item of {@code b}, or the panel in that of the body
 * @param sizeA size of the item of {@code a}
 * @param sizeB size of the item of {@code b}
 * @param longest greatest length that leaves room for spare (µm); {@code Integer.MAX_VALUE} if none is set
 * @param trays trays of its class, with their lengths
 */
public record WireTerm(int a, int b, Point portA, Point portB, Size sizeA, Size sizeB, int longest, TrayTable trays)
        implements TieTerm {

    @Override
    public Foot foot(boolean first, QuarterTurn turn, int x, int y, int z) {
        Point at = turn.apply(first ? portA : portB, first ? sizeA : sizeB);
        return foot(x + at.x(), y + at.y(), z + at.z());
    }

    @Override
    public Foot fixed() {
        return foot(portB.x(), portB.y(), portB.z());
    }

    private Foot foot(int x, int y, int z) {
        int best = Integer.MAX_VALUE;
        int tray = -1;
        int station = 0;
        List<TrayPath> paths = trays.trays();
        for (int i = 0; i < paths.size(); i++) {
            List<Point> path = paths.get(i).tray().path();
            int passed = 0;
            for (int k = 1; k < path.size(); k++) {
                Point p = path.get(k - 1);
                Point q = path.get(k);
                int fx = inside(x, p.x(), q.x());
                int fy = inside(y, p.y(), q.y());
                int fz = inside(z, p.z(), q.z());
                int away = Math.abs(fx - x) + Math.abs(fy - y) + Math.abs(fz - z);
                if (away < best) {
                    best = away;
                    tray = i;
                    station = passed + Math.abs(fx - p.x()) + Math.abs(fy - p.y()) + Math.abs(fz - p.z());
                }
                passed += Math.abs(q.x() - p.x()) + Math.abs(q.y() - p.y()) + Math.abs(q.z() - p.z());
            }
        }
        return new Foot(x, y, z, tray, station, tray < 0 ? 0 : best);
    }

    @Override
    public long length(@Nullable Foot one, @Nullable Foot other) {
        if (one == null || other == null) {
            return 0;
        }
        long straight =
                (long) Math.abs(one.x() - other.x()) + Math.abs(one.y() - other.y()) + Math.abs(one.z() - other.z());
        if (one.tray() < 0 || other.tray() < 0) {
            return straight;
        }
        long inTrays = trays.length(one.tray(), one.station(), other.tray(), other.station());
        return straight < LEAD ? straight : Math.max(straight, Math.min(FAR, one.away() + inTrays + other.away()));
    }

    /** Ports nearer than this are joined outside trays. */
    private static final int LEAD = 1_500_000;

    /** Beyond this, no way through trays counts (µm). */
    private static final long FAR = 500_000_000;

    private static int inside(int value, int p, int q) {
        return Math.max(Math.min(p, q), Math.min(value, Math.max(p, q)));
    }
}
