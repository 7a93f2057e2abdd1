package org.shelterwright.app.picture;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.BlockFaces;
import org.shelterwright.app.view.DepthBuffer;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.PictureModel;
import org.shelterwright.app.view.Projection;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * Paints a picture model with a depth buffer, at two by two samples a pixel. Solids may run into each other. The same
 * model gives the same pixels.
 *
 * <p>Cost: linear in the samples that patches and lines cover.
 */
final class DepthPainter {

    private static final int SAMPLES = 2;

    /** How far a line lies before the face that bears it (µm). */
    private static final float NEARER = 8 * Lengths.MM;

    /** More than what squares are off by; the exact distance decides within it. */
    private static final double ROUNDING = 1e-9;

    private final Projection projection;
    private final double scale;
    private final DepthBuffer buffer;
    private final int[] samples;
    private final List<Colour> colours = new ArrayList<>();

    /**
     * @param projection onto paper (mm)
     * @param pixels in a millimetre of paper
     */
    DepthPainter(Projection projection, double pixels, int width, int height, Colour ground) {
        this.projection = projection;
        this.scale = pixels * SAMPLES;
        this.buffer = new DepthBuffer(width * SAMPLES, height * SAMPLES);
        this.samples = new int[buffer.width() * buffer.height()];
        java.util.Arrays.fill(samples, ground.rgb());
    }

    BufferedImage paint(PictureModel model) {
        for (Facet facet : model.ground()) {
            wash(facet);
        }
        List<Block> blocks = new ArrayList<>(model.shell());
        blocks.addAll(model.blocks());
        for (Block block : blocks) {
            BlockFaces.facets(block, projection.view()).forEach(this::solid);
        }
        model.facets().stream().filter(facet -> facet.colour().opacity() == 1).forEach(this::solid);
        fill();
        model.facets().stream().filter(facet -> facet.colour().opacity() < 1).forEach(this::wash);
        model.traces().forEach(this::line);
        for (Block block : blocks) {
            block.traces().forEach(this::line);
            BlockFaces.edges(block, projection.view()).forEach(this::line);
        }
        return image();
    }

    private void solid(Facet facet) {
        buffer.put(spots(facet.corners()), depths(facet.corners()), colours.size());
        colours.add(facet.colour());
    }

    private void fill() {
        for (int y = 0; y < buffer.height(); y++) {
            for (int x = 0; x < buffer.width(); x++) {
                int id = buffer.id(x, y);
                if (id != DepthBuffer.NOTHING) {
                    samples[y * buffer.width() + x] = colours.get(id).rgb();
                }
            }
        }
    }

    private void wash(Facet facet) {
        buffer.cover(spots(facet.corners()), depths(facet.corners()), (x, y, depth) -> {
            if (depth < buffer.depth(x, y)) {
                blend(x, y, facet.colour(), facet.colour().opacity());
            }
        });
    }

    private void line(Trace trace) {
        List<Spot> spots = spots(trace.points());
        double[] depths = depths(trace.points());
        double[] dashes = trace.pen().type().dashes(trace.pen().width() * scale);
        double half = Math.max(0.5, trace.pen().width() * scale / 2);
        double way = 0;
        for (int i = 0; i + 1 < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get(i + 1);
            double length = a.distance(b);
            for (double[] dash : Dashes.on(way, length, dashes)) {
                double from = length == 0 ? 0 : dash[0] / length;
                double to = length == 0 ? 1 : dash[1] / length;
                stroke(
                        a.towards(b, from),
                        depths[i] + (depths[i + 1] - depths[i]) * from,
                        a.towards(b, to),
                        depths[i] + (depths[i + 1] - depths[i]) * to,
                        half,
                        trace.pen().colour());
            }
            way += length;
        }
    }

    private void stroke(Spot a, double depthA, Spot b, double depthB, double half, Colour colour) {
        int x0 = (int) Math.max(0, Math.min(a.x(), b.x()) - half - 1);
        int x1 = (int) Math.min(buffer.width() - 1, Math.max(a.x(), b.x()) + half + 1);
        int y0 = (int) Math.max(0, Math.min(a.y(), b.y()) - half - 1);
        int y1 = (int) Math.min(buffer.height() - 1, Math.max(a.y(), b.y()) + half + 1);
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double reach = half + 0.5;
        double far = reach * reach * (1 + ROUNDING);
        // On each row, the band of the stroke's endless line, and a sample more on both sides.
        double side = dy == 0 ? Double.POSITIVE_INFINITY : reach * Math.sqrt(square) / Math.abs(dy) + 1;
        for (int y = y0; y <= y1; y++) {
            double py = y + 0.5 - a.y();
            double middle = dy == 0 ? 0 : a.x() - 0.5 + py * dx / dy;
            int from = (int) Math.max(x0, Math.floor(middle - side));
            int to = (int) Math.min(x1, Math.ceil(middle + side));
            for (int x = from; x <= to; x++) {
                double px = x + 0.5 - a.x();
                double share = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
                double ex = px - share * dx;
                double ey = py - share * dy;
                if (ex * ex + ey * ey < far && depthA + (depthB - depthA) * share - NEARER < buffer.depth(x, y)) {
                    double cover = reach - Math.hypot(ex, ey);
                    if (cover > 0) {
                        blend(x, y, colour, colour.opacity() * Math.min(1, cover));
                    }
                }
            }
        }
    }

    private void blend(int x, int y, Colour colour, double share) {
        int at = y * buffer.width() + x;
        int under = samples[at];
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int below = under >> shift & 0xFF;
            int above = colour.rgb() >> shift & 0xFF;
            mixed |= (int) (below + (above - below) * share + 0.5) << shift;
        }
        samples[at] = mixed;
    }

    private BufferedImage image() {
        int width = buffer.width() / SAMPLES;
        int height = buffer.height() / SAMPLES;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, pixel(x, y));
            }
        }
        return image;
    }

    private int pixel(int x, int y) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int sum = SAMPLES * SAMPLES / 2;
            for (int i = 0; i < SAMPLES * SAMPLES; i++) {
                int at = (y * SAMPLES + i / SAMPLES) * buffer.width() + x * SAMPLES + i % SAMPLES;
                sum += samples[at] >> shift & 0xFF;
            }
            rgb |= sum / (SAMPLES * SAMPLES) << shift;
        }
        return rgb;
    }

    private List<Spot> spots(List<Point> points) {
        return points.stream()
                .map(projection::spot)
                .map(spot -> new Spot(spot.x() * scale, spot.y() * scale))
                .toList();
    }

    private double[] depths(List<Point> points) {
        return points.stream().mapToDouble(projection.view()::depth).toArray();
    }
}
