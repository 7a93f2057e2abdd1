package org.shelterwright.app.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Parallel lines that fill an outline. Lines of one angle and pitch fall on one lattice of the paper, so that hatches of
 * neighbouring parts of one body join.
 *
 * @param corners of the outline, which must not cross itself
 * @param angle of the lines against the x axis (degrees, positive upwards on paper)
 * @param pitch distance between the lines (mm)
 */
public record Hatch(List<Spot> corners, double angle, double pitch, Pen pen) implements Shape {

    public Hatch {
        corners = List.copyOf(corners);
        if (!(pitch > 0)) {
            throw new IllegalArgumentException("The pitch of a hatch must be above zero, but is " + pitch + " mm.");
        }
    }

    public static Hatch of(Bounds b, double angle, double pitch, Pen pen) {
        return new Hatch(Polygon.corners(b), angle, pitch, pen);
    }

    /** The lines, cut at the outline. Cost: lines times corners. */
    public List<List<Spot>> lines() {
        double turn = Math.toRadians(angle);
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double low =
                corners.stream().mapToDouble(s -> across(s, cos, sin)).min().orElse(0);
        double high =
                corners.stream().mapToDouble(s -> across(s, cos, sin)).max().orElse(0);
        List<List<Spot>> lines = new ArrayList<>();
        for (double c = Math.ceil(low / pitch) * pitch; c < high; c += pitch) {
            List<Double> cuts = cuts(c, cos, sin);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                lines.add(List.of(spot(cuts.get(i), c, cos, sin), spot(cuts.get(i + 1), c, cos, sin)));
            }
        }
        return lines;
    }

    @Override
    public void onto(Canvas canvas) {
        List<List<Spot>> lines = lines();
        if (!lines.isEmpty()) {
            canvas.lines(lines, pen);
        }
    }

    @Override
    public Hatch moved(double dx, double dy) {
        return new Hatch(corners.stream().map(s -> s.plus(dx, dy)).toList(), angle, pitch, pen);
    }

    private List<Double> cuts(double c, double cos, double sin) {
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            double ca = across(a, cos, sin) - c;
            double cb = across(b, cos, sin) - c;
            if ((ca < 0) != (cb < 0)) {
                double share = ca / (ca - cb);
                cuts.add(along(a, cos, sin) * (1 - share) + along(b, cos, sin) * share);
            }
        }
        Collections.sort(cuts);
        return cuts;
    }

    private static double along(Spot s, double cos, double sin) {
        return s.x() * cos - s.y() * sin;
    }

    private static double across(Spot s, double cos, double sin) {
        return s.x() * sin + s.y() * cos;
    }

    private static Spot spot(double along, double across, double cos, double sin) {
        return new Spot(along * cos + across * sin, -along * sin + across * cos);
    }
}
