package org.shelterwright.solver.fit.model;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;

/**
 * How far a piece lies from where its task needs it, in the plan: between the slot of the unit that it is stowed in and that of the unit
 * that the task is done at, or an opening.
 *
 * @param a slot that the piece is in
 * @param b slot that the task is done at; -1 if that is an opening of the body
 * @param piece middle of its place in the frame of the item of {@code a}
 * @param spot where the task is done in the frame of the item of {@code b}, or of the body
 * @param sizeA size of the item of {@code a}
 * @param sizeB size of the item of {@code b}; any for an opening
 * @param longest how far it may lie (µm); {@code Integer.MAX_VALUE} if it need not be at hand
 */
public record HandTerm(int a, int b, Point piece, Point spot, Size sizeA, Size sizeB, int longest) implements TieTerm {
    @Override
    public Foot foot(boolean first, QuarterTurn turn, int x, int y, int z) {
        Point at = turn.apply(first ? piece : spot, first ? sizeA : sizeB);
        return Foot.at(x + at.x(), y + at.y(), 0);
    }

    @Override
    public Foot fixed() {
        return Foot.at(spot.x(), spot.y(), 0);
    }

    @Override
    public long length(@Nullable Foot one, @Nullable Foot other) {
        return one == null || other == null
                ? 0
                : Math.round(Math.hypot(one.x() - (double) other.x(), one.y() - (double) other.y()));
    }
}
