package org.shelterwright.app.view;

import java.util.Arrays;
import java.util.List;
import org.shelterwright.app.drawing.Spot;

/**
 * Which patch is nearest at each sample of a picture. Depths are exact: a flat patch under parallel projection has a
 * depth that is linear over the picture.
 */
public final class DepthBuffer {

    /** Id of a sample that no patch covers. */
    public static final int NOTHING = -1;

    private final int width;
    private final int height;
    private final float[] depths;
    private final int[] ids;

    public DepthBuffer(int width, int height) {
        this.width = width;
        this.height = height;
        this.depths = new float[width * height];
        this.ids = new int[width * height];
        Arrays.fill(depths, Float.POSITIVE_INFINITY);
        Arrays.fill(ids, NOTHING);
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    public int id(int x, int y) {
        return ids[y * width + x];
    }

    public float depth(int x, int y) {
        return depths[y * width + x];
    }

    /** What is done at each sample that a patch covers. */
    public interface Sample {
        void at(int x, int y, float depth);
    }

    /**
     * Puts a convex patch in.
     *
     * @param corners in samples
     * @param depth of each corner; smaller is nearer
     */
    public void put(List<Spot> corners, double[] depth, int id) {
        cover(corners, depth, (x, y, z) -> {
            int at = y * width + x;
            if (z < depths[at]) {
                depths[at] = z;
                ids[at] = id;
            }
        });
    }

    /** Visits the samples whose middle lies in a convex patch. Cost: linear in the samples covered. */
    public void cover(List<Spot> corners, double[] depth, Sample sample) {
        double[] plane = plane(corners, depth);
        double low = corners.stream().mapToDouble(Spot::y).min().orElse(0);
        double high = corners.stream().mapToDouble(Spot::y).max().orElse(0);
        int last = Math.min(height - 1, (int) Math.ceil(high - 0.5) - 1);
        for (int y = Math.max(0, (int) Math.ceil(low - 0.5)); y <= last; y++) {
            double row = y + 0.5;
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < corners.size(); i++) {
                Spot a = corners.get(i);
                Spot b = corners.get((i + 1) % corners.size());
                if ((a.y() <= row) != (b.y() <= row)) {
                    double x = a.x() + (row - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                    from = Math.min(from, x);
                    to = Math.max(to, x);
                }
            }
            int end = Math.min(width - 1, (int) Math.ceil(to - 0.5) - 1);
            for (int x = Math.max(0, (int) Math.ceil(from - 0.5)); x <= end; x++) {
                sample.at(x, y, (float) (plane[0] * (x + 0.5) + plane[1] * row + plane[2]));
            }
        }
    }

    /** Depth as a x + b y + c through the first three corners that do not lie on one line. */
    private static double[] plane(List<Spot> corners, double[] depth) {
        Spot a = corners.get(0);
        for (int i = 1; i + 1 < corners.size(); i++) {
            Spot b = corners.get(i);
            Spot c = corners.get(i + 1);
            double area = (b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y());
            if (Math.abs(area) > 1e-9) {
                double zx =
                        ((depth[i] - depth[0]) * (c.y() - a.y()) - (depth[i + 1] - depth[0]) * (b.y() - a.y())) / area;
                double zy =
                        ((depth[i + 1] - depth[0]) * (b.x() - a.x()) - (depth[i] - depth[0]) * (c.x() - a.x())) / area;
                return new double[] {zx, zy, depth[0] - zx * a.x() - zy * a.y()};
            }
        }
        return new double[] {0, 0, depth[0]};
    }
}
