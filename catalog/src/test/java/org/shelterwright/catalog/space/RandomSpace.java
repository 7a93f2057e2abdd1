package org.shelterwright.catalog.space;

import java.util.Random;

/** Seeded shapes on a small raster, so that touching and exact fits are common. */
final class RandomSpace {
    private final Random random;

    RandomSpace(long seed) {
        random = new Random(seed);
    }

    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    Size size() {
        return new Size(between(1, 9), between(1, 9), between(1, 9));
    }

    Point point() {
        return new Point(between(-9, 9), between(-9, 9), between(-9, 9));
    }

    /** Flat at times. */
    Box box() {
        Point low = point();
        return Box.between(low, low.plus(new Point(between(0, 6), between(0, 6), between(0, 6))));
    }

    QuarterTurn turn() {
        return QuarterTurn.values()[random.nextInt(4)];
    }
}
