package org.shelterwright.solver.fit.kernel;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Moments;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/**
 * Where every slot is, with all costs kept up to date. A move is first scored ({@link #probe}) and then made
 * ({@link #commit}); a scored move that is not made leaves no trace. Amounts are in µm, costs in mm. Not for several
 * threads.
 */
public final class State {
    private static final long UNPLACED = 1_000_000;

    private final FitProblem problem;
    private final int n;
    final Option[] option;
    final int[] optionNumber;
    final int[] x;
    final int[] y;
    final int[] z;
    final boolean[] placed;
    private final int[] guests;
    private final Reaches reaches;
    private final PairCosts pairs;
    private final OwnCosts own;
    private final WishCosts wishes;
    private final TieCosts ties;
    private final Totals totals;
    private final BerthLoads berths;
    private final Ways ways;
    private Weights weights = Weights.STRICT;
    private long hard;
    private long medium;
    private long soft;
    private long overloaded;
    private long waysHard;
    private long waysMedium;
    private int unplaced;

    private int probed = -1;
    private int probedOption;
    private int probedX;
    private int probedY;
    private int probedZ;
    private long probedOverload;

    public State(FitProblem problem) {
        this.problem = problem;
        this.n = problem.size();
        this.unplaced = n;
        this.option = new Option[n];
        this.optionNumber = new int[n];
        this.x = new int[n];
        this.y = new int[n];
        this.z = new int[n];
        this.placed = new boolean[n];
        this.guests = new int[n];
        this.reaches = new Reaches(problem);
        this.pairs = new PairCosts(problem, this, reaches);
        this.own = new OwnCosts(problem, this);
        this.wishes = new WishCosts(problem, this);
        this.ties = new TieCosts(problem);
        this.totals = new Totals(problem, this);
        this.berths = new BerthLoads(problem, this);
        this.ways = new Ways(this);
    }

    public FitProblem problem() {
        return problem;
    }

    public Weights weights() {
        return weights;
    }

    /** Sets what the levels cost from now on. */
    public void price(Weights changed) {
        weights = changed;
    }

    public boolean isPlaced(int slot) {
        return placed[slot];
    }

    /** Whether nothing is placed. */
    public boolean isEmpty() {
        return unplaced == n;
    }

    public int guestsOf(int slot) {
        return guests[slot];
    }

    public QuarterTurn turn(int slot) {
        return option[slot].turn();
    }

    /** Cost of the whole state at the present prices (mm). */
    public double cost() {
        return weights.cost(
                hard + overloaded + totals.hard() + waysHard,
                medium + totals.medium() + waysMedium + ties.over(),
                soft + wishes.total() + ties.soft() + totals.soft());
    }

    /** Amounts of the three levels (µm); a slot without a place counts as much as a metre of overlap. */
    public Amounts score() {
        return new Amounts(
                hard + overloaded + totals.hard() + waysHard + UNPLACED * unplaced,
                medium + totals.medium() + waysMedium + ties.over(),
                soft + wishes.total() + ties.soft() + totals.soft());
    }

    /** Sets what walking the floor found (µm); it stays until it is set again. */
    void ways(long hardAmount, long mediumAmount) {
        waysHard = hardAmount;
        waysMedium = mediumAmount;
    }

    /** Has masses and moments priced by these tangents from now on. */
    void follow(Planes planes) {
        totals.follow(planes);
    }

    /** Moments of the masses of all placed units in one situation. */
    public Moments moments(boolean onStation) {
        return totals.moments(onStation);
    }

    /** Walks the floor and takes what it finds into the score. */
    public void walk() {
        walk(Double.POSITIVE_INFINITY);
    }

    /**
     * Walks the floor and takes what it finds into the score, unless it costs too much.
     *
     * @param allowed greatest cost of interest (mm)
     * @return false if it costs more; the score is then as before
     */
    boolean walk(double allowed) {
        if (ways.asked()) {
            if (!ways.walk(weights, allowed)) {
                return false;
            }
            ways(ways.hard(), ways.medium());
        }
        return true;
    }

    /** Cost of what walking the floor found last (mm). */
    double waysCost() {
        return weights.cost(waysHard, waysMedium, 0);
    }

    /** Whether walking the floor matters at all. */
    boolean walked() {
        return ways.asked();
    }

    /**
     * Scores putting a slot at a place, or moving it there.
     *
     * @param bound the move is of no interest if it costs more than this
     * @return change of the cost (mm); infinite if above the bound
     */
    public double probe(int slot, int optionIndex, int px, int py, int pz, double bound) {
        Option candidate = problem.slot(slot).options().get(optionIndex);
        probed = slot;
        probedOption = optionIndex;
        probedX = px;
        probedY = py;
        probedZ = pz;
        own.probe(slot, candidate, px, py, pz);
        double before = placed[slot]
                ? weights.cost(pairs.rowHard(slot) + own.hard(slot), pairs.rowMedium(slot) + own.medium(slot), 0)
                : 0;
        totals.probe(slot, candidate, px, py, pz);
        ties.probe(slot, candidate, px, py, pz);
        probedOverload = berths.changes(slot, candidate) ? berths.excess(slot, candidate) : overloaded;
        double change = weights.cost(
                        own.probedHard() + probedOverload - overloaded + totals.probedHard() - totals.hard(),
                        own.probedMedium() + totals.probedMedium() - totals.medium() + ties.overChange(),
                        own.probedSoft()
                                - own.soft(slot)
                                + totals.probedSoft()
                                - totals.soft()
                                + wishes.probe(slot, candidate, px, py, pz)
                                + ties.softChange())
                - before;
        return change > bound ? Double.POSITIVE_INFINITY : pairs.probe(slot, candidate, px, py, pz, change, bound);
    }

    /** Makes the move that was scored last; its bound must not have been exceeded. */
    public void commit() {
        int slot = probed;
        Option after = problem.slot(slot).options().get(probedOption);
        Option.Berth left = placed[slot] ? option[slot].berth() : null;
        if (left != null) {
            guests[left.slot()]--;
        }
        Option.Berth taken = after.berth();
        if (taken != null) {
            guests[taken.slot()]++;
        }
        hard += own.probedHard() - own.hard(slot) + pairs.probedHard() - pairs.rowHard(slot);
        medium += own.probedMedium() - own.medium(slot) + pairs.probedMedium() - pairs.rowMedium(slot);
        overloaded = probedOverload;
        soft += own.probedSoft() - own.soft(slot);
        own.commit(slot);
        pairs.commit(slot);
        wishes.commit();
        ties.commit();
        totals.commit();
        option[slot] = after;
        optionNumber[slot] = probedOption;
        x[slot] = probedX;
        y[slot] = probedY;
        z[slot] = probedZ;
        unplaced -= placed[slot] ? 0 : 1;
        placed[slot] = true;
        reaches.set(slot, after, probedX, probedY, probedZ);
        if (guests[slot] > 0) {
            soft += own.hostMoved(slot);
        }
    }

    /** Puts a slot at a spot. */
    public void put(int slot, Spot spot) {
        probe(slot, spot.option(), spot.x(), spot.y(), spot.z(), Double.POSITIVE_INFINITY);
        commit();
    }

    /** Takes a slot out; it then costs nothing. */
    public void remove(int slot) {
        if (!placed[slot]) {
            return;
        }
        overloaded = berths.changes(slot, null) ? berths.excess(slot, null) : overloaded;
        hard -= own.hard(slot) + pairs.rowHard(slot);
        medium -= own.medium(slot) + pairs.rowMedium(slot);
        soft -= own.soft(slot);
        own.clear(slot);
        pairs.clear(slot);
        placed[slot] = false;
        unplaced++;
        wishes.remove(slot);
        ties.remove(slot);
        totals.remove(slot);
        Option.Berth left = option[slot].berth();
        if (left != null) {
            guests[left.slot()]--;
        }
    }

    /** The spot of a slot; {@code null} if it is not placed. */
    public @Nullable Spot spot(int slot) {
        return placed[slot] ? new Spot(optionNumber[slot], x[slot], y[slot], z[slot]) : null;
    }

    /** The spots of all slots. */
    public @Nullable Spot[] spots() {
        @Nullable Spot[] spots = new Spot[n];
        for (int i = 0; i < n; i++) {
            spots[i] = spot(i);
        }
        return spots;
    }

    /** Puts all slots at the given spots, hosts before guests; those without a spot are taken out. */
    public void restore(@Nullable Spot[] spots) {
        boolean[] done = new boolean[n];
        for (int i = 0; i < n; i++) {
            restore(i, spots, done);
        }
    }

    private void restore(int slot, @Nullable Spot[] spots, boolean[] done) {
        if (done[slot]) {
            return;
        }
        done[slot] = true;
        Spot spot = spots[slot];
        if (spot == null) {
            remove(slot);
            return;
        }
        Option.Berth berth = problem.slot(slot).options().get(spot.option()).berth();
        if (berth != null) {
            restore(berth.slot(), spots, done);
        }
        put(slot, spot);
    }

    /** Slots that break something, by their own or in a pair (µm, hard and medium together). */
    public long trouble(int slot) {
        return placed[slot]
                ? own.hard(slot) + own.medium(slot) + pairs.rowHard(slot) + pairs.rowMedium(slot)
                : Long.MAX_VALUE;
    }

    /** Height of the lowest thing of a slot above the floor (µm). */
    int lowest(int slot) {
        return reaches.z0[slot];
    }

    /** Low end of the turned size of a slot on an axis, numbered from zero. */
    int low(int slot, int axis) {
        return axis == 0 ? x[slot] : axis == 1 ? y[slot] : z[slot];
    }

    /** High end of the turned size of a slot on an axis. */
    int high(int slot, int axis) {
        return low(slot, axis) + length(slot, axis);
    }

    /** Turned size of a slot on an axis. */
    int length(int slot, int axis) {
        Size size = option[slot].size();
        return axis == 0 ? size.x() : axis == 1 ? size.y() : size.z();
    }

    /** Whether two slots are there in one situation. */
    boolean meet(int i, int j) {
        Slot a = problem.slot(i);
        Slot b = problem.slot(j);
        return a.onStation() && b.onStation() || a.onTheRoad() && b.onTheRoad();
    }

    /** Whether the sizes of two slots overlap on both axes but one. */
    boolean abreast(int i, int j, int but) {
        for (int axis = 0; axis < 3; axis++) {
            if (axis != but && (low(i, axis) >= high(j, axis) || low(j, axis) >= high(i, axis))) {
                return false;
            }
        }
        return true;
    }

    /** The slots that are in one another's way with this one; fills the array and gives their count. */
    int neighbours(int slot, int[] found) {
        return reaches.touching(slot, placed, found);
    }

    @Override
    public String toString() {
        return score() + " " + Arrays.toString(spots());
    }
}
