package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * An order in which blocks can be painted over each other. A block cannot hide another that lies on the viewer's side of
 * a plane between them; what may hide another is painted after it. Where solids run into each other or hide each other
 * in a ring, the farther middle goes first.
 *
 * <p>Cost: quadratic in the blocks.
 */
final class BackToFront {

    private final Projection projection;

    BackToFront(Projection projection) {
        this.projection = projection;
    }

    List<Block> order(List<Block> blocks) {
        List<Block> sorted = new ArrayList<>(blocks);
        sorted.sort(Comparator.comparingDouble(block -> -depth(block)));
        boolean[][] hides = hides(sorted);
        boolean[] done = new boolean[sorted.size()];
        List<Block> order = new ArrayList<>();
        while (order.size() < sorted.size()) {
            int next = next(hides, done);
            done[next] = true;
            order.add(sorted.get(next));
        }
        return order;
    }

    /** The farthest block that hides no other one that is left; the farthest of all if there is none. */
    private static int next(boolean[][] hides, boolean[] done) {
        int first = -1;
        for (int i = 0; i < done.length; i++) {
            if (!done[i]) {
                first = first < 0 ? i : first;
                boolean free = true;
                for (int j = 0; j < done.length && free; j++) {
                    free = done[j] || !hides[i][j];
                }
                if (free) {
                    return i;
                }
            }
        }
        return first;
    }

    /** Whether the first block, in part, lies before the second one in the picture. */
    private boolean[][] hides(List<Block> blocks) {
        List<Bounds> bounds = blocks.stream().map(this::bounds).toList();
        boolean[][] hides = new boolean[blocks.size()][blocks.size()];
        for (int i = 0; i < blocks.size(); i++) {
            for (int j = 0; j < blocks.size(); j++) {
                Box a = blocks.get(i).box();
                Box b = blocks.get(j).box();
                hides[i][j] =
                        i != j && bounds.get(i).overlaps(bounds.get(j)) && !behind(a, b) && (behind(b, a) || i > j);
            }
        }
        return hides;
    }

    /** Whether a plane between both has b on the viewer's side. */
    private boolean behind(Box a, Box b) {
        for (Axis axis : Axis.values()) {
            Face towardsHigh = switch (axis) {
                case X -> Face.FRONT;
                case Y -> Face.LEFT;
                case Z -> Face.TOP;
            };
            boolean viewerHigh = projection.view().sees(towardsHigh);
            if (viewerHigh ? a.high(axis) <= b.low(axis) : b.high(axis) <= a.low(axis)) {
                return true;
            }
        }
        return false;
    }

    private double depth(Block block) {
        return projection.view().depth(block.box().centre());
    }

    private Bounds bounds(Block block) {
        return Bounds.of(projection.spots(Block.corners(block.box())));
    }
}
