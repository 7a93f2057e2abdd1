package org.shelterwright.app.look;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Hatch;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * The bar of a limit. Demand fills it from the left; the capacity is a fence: a line with short ticks on the side where
 * the demand may not be. All bars of a list have their fence at the same place.
 */
public final class LimitBar {

    /** Length from the start of a bar to its fence (mm). */
    public static final double LENGTH = 36;

    /** Farthest that a broken bar reaches beyond the fence (mm). */
    public static final double BEYOND = 6.5;

    private static final double HALF = 0.9;
    private static final double LEAST_BEYOND = 1.7;

    private final double length;
    private final Ground ground;

    /** @param length from the start of a bar to its fence (mm) */
    public LimitBar(double length, Ground ground) {
        this.length = length;
        this.ground = ground;
    }

    /**
     * A bar of the usual length on light ground.
     *
     * @param start its left end, at its middle line
     * @param use demand / capacity; ignored if not assessed
     * @param closeShare use from which a bar is close
     */
    public static List<Shape> shapes(Spot start, double use, Verdict verdict, double closeShare) {
        return new LimitBar(LENGTH, Ground.LIGHT).bar(start, use, verdict, closeShare);
    }

    /** A bar; see {@link #shapes}. */
    public List<Shape> bar(Spot start, double use, Verdict verdict, double closeShare) {
        List<Shape> shapes = new ArrayList<>();
        double fence = start.x() + length;
        if (verdict == Verdict.NOT_ASSESSED) {
            Pen dots = Pen.of(0.4, Role.NOT_ASSESSED.colour(ground)).with(LineType.SHORT_DASHED);
            shapes.add(Lines.of(dots, start, new Spot(fence - 2, start.y())));
        } else {
            Colour colour = verdict == Verdict.MET ? Role.BAR.colour(ground) : VerdictSign.colour(verdict, ground);
            double close = start.x() + length * Math.min(1, closeShare);
            shapes.add(Polygon.of(strip(start, start.x(), fence), Role.TRACK.colour(ground), null));
            shapes.add(Hatch.of(strip(start, close, fence), 60, 0.9, Pen.of(0.18, Role.FAINT.colour(ground))));
            shapes.add(Lines.of(
                    Pen.of(0.22, Role.LINES.colour(ground)),
                    new Spot(close, start.y() - HALF - 0.45),
                    new Spot(close, start.y() + HALF + 0.45)));
            double end = start.x() + length * Math.min(1, Math.max(0, use));
            if (end > start.x()) {
                shapes.add(Polygon.of(strip(start, start.x(), end), colour, null));
            }
            if (verdict == Verdict.BROKEN) {
                beyond(shapes, new Spot(fence, start.y()), use);
            }
        }
        fence(shapes, new Spot(fence, start.y()));
        return shapes;
    }

    private void beyond(List<Shape> shapes, Spot fence, double use) {
        double width = Math.min(BEYOND, Math.max(LEAST_BEYOND, (use - 1) * length));
        Bounds box = new Bounds(fence.x(), fence.y() - 1.35, fence.x() + width, fence.y() + 1.35);
        Pen line = Pen.of(0.26, Role.BROKEN.colour(ground));
        shapes.add(Polygon.of(box, Role.BROKEN_WASH.colour(ground), null));
        shapes.add(Hatch.of(box, 45, 0.65, line));
        shapes.add(Polygon.of(box, null, line));
    }

    private void fence(List<Shape> shapes, Spot at) {
        double half = 2.2;
        shapes.add(Lines.of(Pen.of(0.45, Role.FENCE.colour(ground)), at.plus(0, -half), at.plus(0, half)));
        List<List<Spot>> ticks = new ArrayList<>();
        for (double y = at.y() - half + 1.1; y <= at.y() + half + 1e-9; y += 1.1) {
            ticks.add(List.of(new Spot(at.x(), y), new Spot(at.x() + 0.95, y - 0.95)));
        }
        shapes.add(new Lines(ticks, Pen.of(0.22, Role.FENCE.colour(ground))));
    }

    private static Bounds strip(Spot start, double from, double to) {
        return new Bounds(from, start.y() - HALF, to, start.y() + HALF);
    }
}
