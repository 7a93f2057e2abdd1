package org.shelterwright.solver.load.packing;

import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.space.Spaces;

/**
 * How much of the surface of a block would touch walls and other blocks, in one space. Everything is seen from the corner
 * at which blocks are put there.
 */
final class Contact {
    private final Size room;
    private final boolean supported;
    private final Side nearX = new Side();
    private final Side farX = new Side();
    private final Side nearY = new Side();
    private final Side farY = new Side();
    private final Side below = new Side();
    private final Side above = new Side();
    private double near;

    Contact(BlockTable table) {
        this.room = table.problem().room();
        this.supported = table.problem().support() == Support.FULL;
    }

    /** Looks round one space. */
    void look(Packing packing, int s, double share) {
        near = share;
        Spaces spaces = packing.spaces();
        int sx0 = spaces.x0(s);
        int sy0 = spaces.y0(s);
        int sz0 = spaces.z0(s);
        int sx1 = spaces.x1(s);
        int sy1 = spaces.y1(s);
        int sz1 = spaces.z1(s);
        boolean highX = spaces.highX(s);
        boolean highY = spaces.highY(s);
        clear();
        walls(sx0, sy0, sz0, sx1, sy1, highX, highY);
        int reachX = (int) (share * (sx1 - sx0));
        int reachY = (int) (share * (sy1 - sy0));
        for (int i = 0; i < packing.size(); i++) {
            int bz0 = packing.z(i);
            int bz1 = packing.farZ(i);
            if (bz1 <= sz0 && supported) {
                continue;
            }
            int bx0 = packing.x(i);
            int by0 = packing.y(i);
            int bx1 = packing.farX(i);
            int by1 = packing.farY(i);
            boolean beside = bz0 < sz1 && sz0 < bz1;
            boolean level = bx0 < sx1 && sx0 < bx1;
            boolean across = by0 < sy1 && sy0 < by1;
            if (beside && across) {
                if (sx0 - bx1 <= reachX && bx0 - sx1 <= reachX) {
                    Side side = (bx1 <= sx0) != highX ? nearX : farX;
                    int at = highX ? (bx1 <= sx0 ? sx1 - bx1 : bx0 - sx1) : (bx1 <= sx0 ? sx0 - bx1 : bx0 - sx0);
                    side.add(at, highY ? sy1 - by1 : by0 - sy0, highY ? sy1 - by0 : by1 - sy0, bz0 - sz0, bz1 - sz0);
                }
            } else if (beside && level) {
                if (sy0 - by1 <= reachY && by0 - sy1 <= reachY) {
                    Side side = (by1 <= sy0) != highY ? nearY : farY;
                    int at = highY ? (by1 <= sy0 ? sy1 - by1 : by0 - sy1) : (by1 <= sy0 ? sy0 - by1 : by0 - sy0);
                    side.add(at, highX ? sx1 - bx1 : bx0 - sx0, highX ? sx1 - bx0 : bx1 - sx0, bz0 - sz0, bz1 - sz0);
                }
            } else if (!supported && across && level) {
                Side side = bz1 <= sz0 ? below : above;
                int at = bz1 <= sz0 ? sz0 - bz1 : bz0 - sz0;
                side.add(
                        at,
                        highX ? sx1 - bx1 : bx0 - sx0,
                        highX ? sx1 - bx0 : bx1 - sx0,
                        highY ? sy1 - by1 : by0 - sy0,
                        highY ? sy1 - by0 : by1 - sy0);
            }
        }
    }

    private void clear() {
        nearX.clear();
        farX.clear();
        nearY.clear();
        farY.clear();
        below.clear();
        above.clear();
    }

    private void walls(int sx0, int sy0, int sz0, int sx1, int sy1, boolean highX, boolean highY) {
        int most = Integer.MAX_VALUE;
        nearX.add(highX ? room.x() - sx1 : sx0, 0, most, 0, most);
        farX.add(highX ? sx1 : room.x() - sx0, 0, most, 0, most);
        nearY.add(highY ? room.y() - sy1 : sy0, 0, most, 0, most);
        farY.add(highY ? sy1 : room.y() - sy0, 0, most, 0, most);
        below.add(supported ? 0 : sz0, 0, most, 0, most);
        above.add(room.z() - sz0, 0, most, 0, most);
    }

    /** Contact as a share of the surface that a block of this size can at most have. */
    double most(int lx, int ly, int lz) {
        double yz = (double) ly * lz;
        double xz = (double) lx * lz;
        double xy = (double) lx * ly;
        double area = (nearX.within(near * lx) ? yz : 0)
                + (farX.within(lx + near * lx) ? yz : 0)
                + (nearY.within(near * ly) ? xz : 0)
                + (farY.within(ly + near * ly) ? xz : 0)
                + (below.within(near * lz) ? xy : 0)
                + (above.within(lz + near * lz) ? xy : 0);
        return area / (2 * (yz + xz + xy));
    }

    /** Contact as a share of the surface of a block of this size. */
    double share(int lx, int ly, int lz) {
        double yz = (double) ly * lz;
        double xz = (double) lx * lz;
        double xy = (double) lx * ly;
        double area = Math.min(yz, nearX.area(ly, lz, near * lx))
                + Math.min(yz, farX.area(ly, lz, lx + near * lx))
                + Math.min(xz, nearY.area(lx, lz, near * ly))
                + Math.min(xz, farY.area(lx, lz, ly + near * ly))
                + Math.min(xy, below.area(lx, ly, near * lz))
                + Math.min(xy, above.area(lx, ly, lz + near * lz));
        return area / (2 * (yz + xz + xy));
    }
}
