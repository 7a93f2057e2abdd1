package org.shelterwright.solver.fit.kernel;

import org.shelterwright.catalog.item.Surface;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.PairTerms;
import org.shelterwright.solver.fit.model.Shape;
import org.shelterwright.solver.fit.model.Slot;

/** What each two slots do to each other, kept in a table, with the sums of its rows. */
final class PairCosts {
    /** What a hole that two units need counts (µm). */
    private static final int SHARED_HOLE = 20_000;

    private final State state;
    private final Reaches reaches;
    private final int n;
    private final boolean[] onStation;
    private final boolean[] onTheRoad;
    private final int[] hard;
    private final int[] medium;
    private final long[] rowHard;
    private final long[] rowMedium;
    private final int[] newHard;
    private final int[] newMedium;
    private final int[] touched;
    private int touchedCount;
    private final Reaches candidate;
    private final int seatHeadroom;
    private final boolean zones;
    private final boolean seats;
    private final boolean exits;
    private final boolean plugs;
    private long probedHard;
    private long probedMedium;
    private int foundHard;
    private int foundMedium;

    PairCosts(FitProblem problem, State state, Reaches reaches) {
        this.state = state;
        this.reaches = reaches;
        this.n = problem.size();
        this.hard = new int[n * n];
        this.medium = new int[n * n];
        this.rowHard = new long[n];
        this.rowMedium = new long[n];
        this.newHard = new int[n];
        this.newMedium = new int[n];
        this.touched = new int[n];
        this.onStation = new boolean[n];
        this.onTheRoad = new boolean[n];
        this.candidate = new Reaches(problem);
        this.seatHeadroom = problem.access().seatHeadroom();
        this.zones = problem.counts("access.zone-free");
        this.seats = problem.counts("access.seats-apart");
        this.exits = problem.counts("access.exit-zone");
        this.plugs = problem.counts("cables.plug-free");
        for (Slot slot : problem.slots()) {
            onStation[slot.index()] = slot.onStation();
            onTheRoad[slot.index()] = slot.onTheRoad();
        }
    }

    long rowHard(int slot) {
        return rowHard[slot];
    }

    long rowMedium(int slot) {
        return rowMedium[slot];
    }

    long probedHard() {
        return probedHard;
    }

    long probedMedium() {
        return probedMedium;
    }

    /** Adds the pair costs of a candidate place to a change found so far; infinite, and not complete, once it is above the bound. */
    double probe(int slot, Option option, int x, int y, int z, double change, double bound) {
        Weights weights = state.weights();
        candidate.set(0, option, x, y, z);
        int x0 = candidate.x0[0];
        int y0 = candidate.y0[0];
        int z0 = candidate.z0[0];
        int x1 = candidate.x1[0];
        int y1 = candidate.y1[0];
        int z1 = candidate.z1[0];
        forget();
        long sumHard = 0;
        long sumMedium = 0;
        double cost = change;
        if (cost > bound) {
            return Double.POSITIVE_INFINITY;
        }
        for (int j = 0; j < n; j++) {
            if (reaches.x0[j] <= x1
                    && x0 <= reaches.x1[j]
                    && reaches.y0[j] <= y1
                    && y0 <= reaches.y1[j]
                    && reaches.z0[j] <= z1
                    && z0 <= reaches.z1[j]
                    && j != slot
                    && state.placed[j]) {
                pair(slot, option, z, j, state.option[j], state.x[j] - x, state.y[j] - y, state.z[j] - z);
                if ((foundHard | foundMedium) != 0) {
                    touched[touchedCount++] = j;
                    newHard[j] = foundHard;
                    newMedium[j] = foundMedium;
                    sumHard += foundHard;
                    sumMedium += foundMedium;
                    cost += weights.cost(foundHard, foundMedium, 0);
                    if (cost > bound) {
                        return Double.POSITIVE_INFINITY;
                    }
                }
            }
        }
        probedHard = sumHard;
        probedMedium = sumMedium;
        return cost;
    }

    /** The same again from another change, with the pair costs that were found last. */
    double plus(double change) {
        double cost = change;
        for (int k = 0; k < touchedCount; k++) {
            cost += state.weights().cost(newHard[touched[k]], newMedium[touched[k]], 0);
        }
        return cost;
    }

    private void forget() {
        for (int k = 0; k < touchedCount; k++) {
            newHard[touched[k]] = 0;
            newMedium[touched[k]] = 0;
        }
        touchedCount = 0;
    }

    /** The worse of both situations counts, limit by limit, as in the ledger. */
    private void pair(int i, Option a, int z, int j, Option b, int dx, int dy, int dz) {
        foundHard = 0;
        foundMedium = 0;
        boolean station = onStation[i] && onStation[j];
        boolean road = onTheRoad[i] && onTheRoad[j];
        boolean aOnB = a.berth() != null && standsOn(a, j);
        boolean bOnA = b.berth() != null && standsOn(b, i);
        int overlap = 0;
        int ofA = 0;
        int ofB = 0;
        if (station) {
            Shape sa = a.station();
            Shape sb = b.station();
            overlap = PairTerms.overlap(sa, sb, dx, dy, dz);
            ofA = zones ? PairTerms.zonesFree(sa, sb, b.seat(), bOnA, dx, dy, dz) : 0;
            ofB = zones ? PairTerms.zonesFree(sb, sa, a.seat(), aOnB, -dx, -dy, -dz) : 0;
            foundMedium = (seats ? PairTerms.seatsApart(a, b, dx, dy, dz) : 0)
                    + (exits ? PairTerms.exitsCrossed(a, b, dx, dy, dz) : 0)
                    + PairTerms.seatHeadroom(a, b, seatHeadroom, -z, dx, dy, dz)
                    + PairTerms.seatHeadroom(b, a, seatHeadroom, -z - dz, -dx, -dy, -dz)
                    + (plugs ? PairTerms.plugsFree(sa, sb, dx, dy, dz) : 0)
                    + (plugs ? PairTerms.plugsFree(sb, sa, -dx, -dy, -dz) : 0);
        }
        if (road && !(station && a.steady() && b.steady())) {
            Shape sa = a.road();
            Shape sb = b.road();
            overlap = Math.max(overlap, PairTerms.overlap(sa, sb, dx, dy, dz));
            if (zones) {
                ofA = Math.max(ofA, PairTerms.zonesFree(sa, sb, b.seat(), bOnA, dx, dy, dz));
                ofB = Math.max(ofB, PairTerms.zonesFree(sb, sa, a.seat(), aOnB, -dx, -dy, -dz));
            }
        }
        foundHard = overlap + (road ? SHARED_HOLE * PairTerms.sharedHoles(a, b, dx, dy, dz) : 0);
        foundMedium += ofA + ofB;
    }

    /** Whether an option puts its unit on top of an owner, directly or on something that stands there. */
    private boolean standsOn(Option option, int owner) {
        Option at = option;
        for (int links = 0; links < n; links++) {
            Option.Berth berth = at.berth();
            if (berth == null) {
                return false;
            }
            if (berth.slot() == owner) {
                return at.surface() == Surface.ON_UNIT;
            }
            if (!state.placed[berth.slot()]) {
                return false;
            }
            at = state.option[berth.slot()];
        }
        return false;
    }

    /** Takes over the costs scored last. */
    void commit(int slot) {
        for (int j = 0; j < n; j++) {
            int at = slot * n + j;
            if (hard[at] != newHard[j]) {
                rowHard[j] += newHard[j] - hard[at];
                hard[at] = newHard[j];
                hard[j * n + slot] = newHard[j];
            }
            if (medium[at] != newMedium[j]) {
                rowMedium[j] += newMedium[j] - medium[at];
                medium[at] = newMedium[j];
                medium[j * n + slot] = newMedium[j];
            }
        }
        rowHard[slot] = probedHard;
        rowMedium[slot] = probedMedium;
    }

    void clear(int slot) {
        forget();
        probedHard = 0;
        probedMedium = 0;
        commit(slot);
    }
}
