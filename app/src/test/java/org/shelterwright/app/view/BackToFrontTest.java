package org.shelterwright.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Tint;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/** Painting over each other against the depth buffer: both must show the same block at every sample. */
class BackToFrontTest {

    private static final int SIZE = 160;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void paintingInOrderShowsWhatTheDepthBufferShows(long seed) {
        // given
        Axonometry view = seed % 2 == 0 ? Axonometry.FROM_REAR_RIGHT : Axonometry.FROM_FRONT_LEFT;
        List<Block> blocks = disjointBlocks(new Random(seed));
        Projection projection = new Projection(view, 1e-6 * 40, SIZE / 2.0, SIZE * 0.75);
        // when
        DepthBuffer exact = new DepthBuffer(SIZE, SIZE);
        IntStream.range(0, blocks.size()).forEach(i -> put(exact, projection, blocks.get(i), i, false));
        DepthBuffer painted = new DepthBuffer(SIZE, SIZE);
        List<Block> order = new BackToFront(projection).order(blocks);
        for (int i = 0; i < order.size(); i++) {
            DepthBuffer layer = painted;
            Block block = order.get(i);
            put(layer, projection, block, blocks.indexOf(block), true, -i);
        }
        // then
        int wrong = 0;
        for (int y = 0; y < SIZE; y++) {
            for (int x = 0; x < SIZE; x++) {
                wrong += exact.id(x, y) == painted.id(x, y) ? 0 : 1;
            }
        }
        assertThat(order).containsExactlyInAnyOrderElementsOf(blocks);
        // Touching faces share their depth, so single samples on common edges may go either way.
        assertThat(wrong).as("seed " + seed).isLessThan(SIZE * SIZE / 1000);
    }

    private static List<Block> disjointBlocks(Random random) {
        List<Block> blocks = new ArrayList<>();
        while (blocks.size() < 25) {
            Point low = Point.ofMm(random.nextInt(16) * 100, random.nextInt(16) * 100, random.nextInt(8) * 100);
            Box box = Box.between(
                    low,
                    low.plus(Point.ofMm(
                            100 + random.nextInt(6) * 100,
                            100 + random.nextInt(6) * 100,
                            100 + random.nextInt(6) * 100)));
            if (blocks.stream().noneMatch(other -> other.box().overlaps(box))) {
                blocks.add(new Block("b" + blocks.size(), box, Shade.of(Tint.STEEL), List.of()));
            }
        }
        return blocks;
    }

    private static void put(
            DepthBuffer buffer, Projection projection, Block block, int id, boolean flat, double... at) {
        for (Face face : Block.seen(projection.view())) {
            List<Point> corners = Block.corners(block.box(), face);
            List<Spot> spots = projection.spots(corners);
            double[] depth = corners.stream()
                    .mapToDouble(corner -> flat ? at[0] : projection.view().depth(corner))
                    .toArray();
            buffer.put(spots, depth, id);
        }
    }
}
