package org.shelterwright.layouts.state;

import java.util.SplittableRandom;

/**
 * Where in its range each mass lies, and its centre on each axis, evenly and independently drawn: from -1 (least) to 1 (most). The
 * same mass has the same draw wherever it stands.
 */
final class Draw {
    private static final int FIGURES = 4;

    private final double[] shares;

    Draw(int masses, SplittableRandom dice) {
        shares = new double[masses * FIGURES];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = dice.nextDouble(-1, 1);
        }
    }

    /** @param figure 0 mass, 1 to 3 the coordinates of the centre */
    double of(int mass, int figure) {
        return shares[mass * FIGURES + figure];
    }
}
