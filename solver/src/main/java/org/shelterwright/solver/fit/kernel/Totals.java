package org.shelterwright.solver.fit.kernel;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;

/**
 * Sums over all slots: masses in grams and their moments in g·µm, exact in {@code long}, so that they never drift; and
 * what the limits and wishes make of them.
 */
final class Totals {
    private final State state;
    private final long[] grams;
    private final boolean[] onTheRoad;
    private final int middle;
    private long sum;
    private long sumX;
    private long sumY;
    private long sumZ;
    private long hard;
    private long medium;
    private long soft;
    private long probedSum;
    private long probedX;
    private long probedY;
    private long probedZ;
    private long probedHard;
    private long probedMedium;
    private long probedSoft;

    Totals(FitProblem problem, State state) {
        this.state = state;
        this.grams = new long[problem.size()];
        this.onTheRoad = new boolean[problem.size()];
        this.middle = problem.inside().y() / 2;
        for (Slot slot : problem.slots()) {
            Double mass = slot.item().mass().massKg();
            grams[slot.index()] = mass == null ? 0 : Math.round(mass * 1000);
            onTheRoad[slot.index()] = slot.in(Situation.ON_THE_ROAD);
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
        return probedHard;
    }

    long probedMedium() {
        return probedMedium;
    }

    long probedSoft() {
        return probedSoft;
    }

    void probe(int slot, Option option, int x, int y, int z) {
        probedSum = sum;
        probedX = sumX;
        probedY = sumY;
        probedZ = sumZ;
        if (onTheRoad[slot]) {
            long mass = grams[slot];
            if (state.placed[slot]) {
                take(slot);
            }
            Point centre = option.centre();
            probedSum += mass;
            probedX += mass * (x + centre.x());
            probedY += mass * (y + centre.y());
            probedZ += mass * (z + centre.z());
        }
        assess();
    }

    void commit() {
        sum = probedSum;
        sumX = probedX;
        sumY = probedY;
        sumZ = probedZ;
        hard = probedHard;
        medium = probedMedium;
        soft = probedSoft;
    }

    void remove(int slot) {
        probedSum = sum;
        probedX = sumX;
        probedY = sumY;
        probedZ = sumZ;
        if (onTheRoad[slot]) {
            take(slot);
        }
        assess();
        commit();
    }

    private void take(int slot) {
        long mass = grams[slot];
        Point centre = state.option[slot].centre();
        probedSum -= mass;
        probedX -= mass * (state.x[slot] + centre.x());
        probedY -= mass * (state.y[slot] + centre.y());
        probedZ -= mass * (state.z[slot] + centre.z());
    }

    /** The centre of mass should lie in the middle and low: each millimetre off the middle counts one, of height a half. */
    private void assess() {
        probedHard = 0;
        probedMedium = 0;
        probedSoft = probedSum == 0 ? 0 : Math.abs(probedY / probedSum - middle) + probedZ / probedSum / 2;
    }
}
