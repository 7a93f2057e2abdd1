package org.shelterwright.solver.fit.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.solver.route.TrayTable;

/**
 * How long a wire comes out between two slots on station, or from a slot to an entry panel: by the trays over which laying it costs
 * least, or straight along the axes where the ends are near. Units in the way are not seen, so it is a little too short.
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

    @Override
    public int share() {
        return SHARE;
    }

    private Foot foot(int x, int y, int z) {
        List<TrayPath> paths = trays.trays();
        Landing[] landings = new Landing[paths.size()];
        for (int i = 0; i < landings.length; i++) {
            landings[i] = landing(i, paths.get(i), x, y, z);
        }
        return new Foot(x, y, z, List.of(landings));
    }

    /** The nearest place of a tray; of a closed one, the nearer end. */
    private static Landing landing(int tray, TrayPath of, int x, int y, int z) {
        List<Point> path = of.tray().path();
        if (of.tray().closed()) {
            Point first = path.get(0);
            Point last = path.get(path.size() - 1);
            int toFirst = Math.abs(first.x() - x) + Math.abs(first.y() - y) + Math.abs(first.z() - z);
            int toLast = Math.abs(last.x() - x) + Math.abs(last.y() - y) + Math.abs(last.z() - z);
            return toFirst <= toLast ? new Landing(tray, 0, toFirst) : new Landing(tray, of.length(), toLast);
        }
        int best = Integer.MAX_VALUE;
        int station = 0;
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
                station = passed + Math.abs(fx - p.x()) + Math.abs(fy - p.y()) + Math.abs(fz - p.z());
            }
            passed += Math.abs(q.x() - p.x()) + Math.abs(q.y() - p.y()) + Math.abs(q.z() - p.z());
        }
        return new Landing(tray, station, best);
    }

    @Override
    public long length(@Nullable Foot one, @Nullable Foot other) {
        if (one == null || other == null) {
            return 0;
        }
        long straight =
                (long) Math.abs(one.x() - other.x()) + Math.abs(one.y() - other.y()) + Math.abs(one.z() - other.z());
        if (straight < LEAD || one.landings().isEmpty()) {
            return straight;
        }
        long least = FAR;
        long length = FAR;
        for (Landing in : one.landings()) {
            for (Landing out : other.landings()) {
                // Laying outside trays costs twice as much: the way is chosen by that, as routes are.
                long outside = (long) in.away() + out.away();
                if (2 * outside + trays.least(in.tray(), out.tray()) < least) {
                    long inTrays = trays.length(in.tray(), in.station(), out.tray(), out.station());
                    if (2 * outside + inTrays < least) {
                        least = 2 * outside + inTrays;
                        length = outside + inTrays;
                    }
                }
            }
        }
        return Math.max(straight, length);
    }

    /** A twentieth: so much that a way that is shorter by 200 mm is worth as much as the search still tells apart at its end. */
    private static final int SHARE = 20;

    /** Ports nearer than this are joined outside trays. */
    private static final int LEAD = 1_500_000;

    /** Beyond this, no way through trays counts (µm). */
    private static final long FAR = 500_000_000;

    private static int inside(int value, int p, int q) {
        return Math.max(Math.min(p, q), Math.min(value, Math.max(p, q)));
    }
}
