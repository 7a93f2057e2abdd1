package org.shelterwright.solver.fit.model;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Wish;

/**
 * One part of a wish, between two slots on station or of one slot alone.
 *
 * @param a slot
 * @param b other slot; the same as {@code a} if the wish concerns one
 * @param distance wanted distance (µm); zero if not apt
 * @param inside inside size of the body
 */
public record WishTerm(Wish.Kind kind, int a, int b, int distance, Face face, Size inside) {
    /** What a front that looks to the wrong side counts (µm): as much as one metre off. */
    private static final int WRONG_FRONT = 1_000_000;

    /**
     * How far the wish is from being kept.
     *
     * @return shortfall (µm); zero if it is kept
     */
    public int shortfall(Option oa, int ax, int ay, int az, Option ob, int bx, int by, int bz) {
        return switch (kind) {
            case NEAR -> Math.max(0, gap(oa, ax, ay, az, ob, bx, by, bz) - distance);
            case APART -> Math.max(0, distance - gap(oa, ax, ay, az, ob, bx, by, bz));
            case SAME_SIDE ->
                otherSide(
                        2 * ay + oa.size().y() - inside.y(), 2 * by + ob.size().y() - inside.y());
            case FACING -> oa.turn().apply(Face.FRONT) == face ? 0 : WRONG_FRONT;
            case ALONG_WALL -> toWall(oa, ax, ay, az);
            case ORDER_ALONG_WALL ->
                face.axis() == Axis.X
                        ? Math.max(0, ay + oa.size().y() - by)
                        : Math.max(0, ax + oa.size().x() - bx);
        };
    }

    private int toWall(Option option, int x, int y, int z) {
        Size size = option.size();
        return switch (face) {
            case REAR -> x;
            case RIGHT -> y;
            case BOTTOM -> z;
            case FRONT -> inside.x() - x - size.x();
            case LEFT -> inside.y() - y - size.y();
            case TOP -> inside.z() - z - size.z();
        };
    }

    private static int otherSide(int a, int b) {
        return (a < 0) == (b < 0) || a == 0 || b == 0 ? 0 : Math.min(Math.abs(a), Math.abs(b)) / 2;
    }

    private static int gap(Option oa, int ax, int ay, int az, Option ob, int bx, int by, int bz) {
        long x = Math.max(
                0, Math.max(bx - ax - oa.size().x(), ax - bx - ob.size().x()));
        long y = Math.max(
                0, Math.max(by - ay - oa.size().y(), ay - by - ob.size().y()));
        long z = Math.max(
                0, Math.max(bz - az - oa.size().z(), az - bz - ob.size().z()));
        return (int) Math.sqrt((double) (x * x + y * y + z * z));
    }
}
