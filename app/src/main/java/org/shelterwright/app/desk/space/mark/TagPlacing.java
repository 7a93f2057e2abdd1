package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;

/**
 * Finds room for tags, one after the other: inside the pane, never over each other or over what is kept free, near their
 * place, and rather on free ground than on solids.
 *
 * <p>Cost: tries times what is taken.
 */
final class TagPlacing {
    private static final int TURNS = 24;
    private static final double STEP = 6;
    private static final double NEAREST = 7;

    private final Bounds pane;
    private final ToDoubleFunction<Bounds> busy;
    private final List<Bounds> taken = new ArrayList<>();
    private final double farthest;

    /**
     * @param busy share of a rectangle that covers something worth seeing, 0 to 1
     * @param farthest longest leader (mm of the pane)
     */
    TagPlacing(Bounds pane, ToDoubleFunction<Bounds> busy, double farthest) {
        this.pane = pane;
        this.busy = busy;
        this.farthest = farthest;
    }

    void keepFree(Bounds bounds) {
        taken.add(bounds);
    }

    /** Room for a tag of a size beside a place; {@code null} if there is none within reach. */
    @Nullable
    Bounds place(Spot at, double width, double height) {
        Bounds best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double way = NEAREST; way <= farthest; way += STEP) {
            if (way > least) {
                break;
            }
            for (int i = 0; i < TURNS; i++) {
                double turn = 2 * Math.PI * i / TURNS;
                double x = Math.cos(turn);
                double y = Math.sin(turn);
                Spot centre = at.plus(
                        x * way + Math.signum(round(x)) * width / 2 * Math.min(1, 2 * Math.abs(x)),
                        y * way + Math.signum(round(y)) * height / 2);
                Bounds bounds = Bounds.around(centre, width, height);
                if (!pane.contains(bounds) || bounds.grown(1).contains(at) || taken(bounds.grown(1))) {
                    continue;
                }
                double cost = way + farthest / 2 * busy.applyAsDouble(bounds);
                if (cost < least) {
                    least = cost;
                    best = bounds;
                }
            }
        }
        if (best != null) {
            taken.add(best);
        }
        return best;
    }

    private boolean taken(Bounds bounds) {
        return taken.stream().anyMatch(bounds::overlaps);
    }

    private static double round(double value) {
        return Math.abs(value) < 1e-9 ? 0 : value;
    }
}
