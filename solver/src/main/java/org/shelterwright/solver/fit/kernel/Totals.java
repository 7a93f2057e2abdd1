package org.shelterwright.solver.fit.kernel;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Moments;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;

/**
 * Sums over all slots: masses in grams and their moments, exact in {@code long}, so that they never drift; and what the
 * limits and wishes make of them. Not for several threads.
 */
final class Totals {
    private static final int MASS = 0;
    private static final int X = 1;
    private static final int Y = 2;
    private static final int Z = 3;
    private static final int XY = 4;
    /** Entries of one situation; those on station come first, those on the road behind them. */
    private static final int COUNT = 5;

    private final State state;
    private final long[] grams;
    private final boolean[] onStation;
    private final boolean[] onTheRoad;
    private final int middle;
    private final long[] sums = new long[2 * COUNT];
    private final long[] probed = new long[2 * COUNT];
    private final double[] moments = new double[8];
    private final long[] lacking = new long[2];
    private @Nullable Planes planes;
    private long hard;
    private long medium;
    private long soft;
    private long probedSoft;

    Totals(FitProblem problem, State state) {
        this.state = state;
        this.grams = new long[problem.size()];
        this.onStation = new boolean[problem.size()];
        this.onTheRoad = new boolean[problem.size()];
        this.middle = problem.inside().y() / 2;
        for (Slot slot : problem.slots()) {
            Double mass = slot.item().mass().massKg();
            grams[slot.index()] = mass == null ? 0 : Math.round(mass * 1000);
            onStation[slot.index()] = slot.onStation();
            onTheRoad[slot.index()] = slot.onTheRoad();
        }
    }

    long hard() {
        return hard;
    }

    long medium() {
        return medium;
    }

    long soft() {
        return soft;
    }

    long probedHard() {
        return lacking[0];
    }

    long probedMedium() {
        return lacking[1];
    }

    long probedSoft() {
        return probedSoft;
    }

    Moments moments(boolean station) {
        int at = station ? 0 : COUNT;
        return new Moments(sums[at + X], sums[at + Y], sums[at + Z], sums[at + XY]);
    }

    /** Prices the sums by these tangents from now on. */
    void follow(Planes changed) {
        planes = changed;
        System.arraycopy(sums, 0, probed, 0, sums.length);
        balance();
        assess();
        commit();
    }

    /** Scores a slot at a place, all but what the limits on moments make of it: {@link #assess} does that. */
    void probe(int slot, Option option, int x, int y, int z) {
        System.arraycopy(sums, 0, probed, 0, sums.length);
        if (state.placed[slot]) {
            add(slot, state.option[slot], state.x[slot], state.y[slot], state.z[slot], -grams[slot]);
        }
        add(slot, option, x, y, z, grams[slot]);
        balance();
    }

    void commit() {
        System.arraycopy(probed, 0, sums, 0, sums.length);
        hard = lacking[0];
        medium = lacking[1];
        soft = probedSoft;
    }

    void remove(int slot) {
        System.arraycopy(sums, 0, probed, 0, sums.length);
        add(slot, state.option[slot], state.x[slot], state.y[slot], state.z[slot], -grams[slot]);
        balance();
        assess();
        commit();
    }

    private void add(int slot, Option option, int x, int y, int z, long mass) {
        Point centre = option.centre();
        int cx = x + centre.x();
        int cy = y + centre.y();
        int cz = z + centre.z();
        long product = Moments.product(mass, cx, cy);
        if (onStation[slot]) {
            add(0, mass, cx, cy, cz, product);
        }
        if (onTheRoad[slot]) {
            add(COUNT, mass, cx, cy, cz, product);
        }
    }

    private void add(int at, long mass, int x, int y, int z, long product) {
        probed[at + MASS] += mass;
        probed[at + X] += mass * x;
        probed[at + Y] += mass * y;
        probed[at + Z] += mass * z;
        probed[at + XY] += product;
    }

    /** The centre of mass on the road should lie in the middle and low: a millimetre off counts one, of height a half. */
    private void balance() {
        long mass = probed[COUNT + MASS];
        probedSoft = mass == 0 ? 0 : Math.abs(probed[COUNT + Y] / mass - middle) + probed[COUNT + Z] / mass / 2;
    }

    /** Finds what the limits on moments lack by what was scored last. */
    void assess() {
        if (planes != null) {
            for (int i = 0; i < 4; i++) {
                moments[i] = probed[X + i];
                moments[4 + i] = probed[COUNT + X + i];
            }
            planes.assess(moments, lacking);
        }
    }
}
