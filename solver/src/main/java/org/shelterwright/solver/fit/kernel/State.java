package org.shelterwright.solver.fit.kernel;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Moments;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Spot;

/**
 * Where every slot is, with all costs kept up to date. A move is first scored ({@link #probe}) and then made
 * ({@link #commit}); a scored move that is not made leaves no trace. Amounts are in µm, costs in mm. Not for several
 * threads.
 */
public final class State extends Poses {
    private static final long UNPLACED = 1_000_000;

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

    private int probed = -1;
    private int probedOption;
    private int probedX;
    private int probedY;
    private int probedZ;
    private long probedOverload;
    private long wishChange;

    /** The slot that is seen where it was scored last, not where it is; none if below zero. */
    private int seen = -1;

    public State(FitProblem problem) {
        super(problem);
        this.reaches = new Reaches(problem);
        this.pairs = new PairCosts(problem, this, reaches);
        this.own = new OwnCosts(problem, this);
        this.wishes = new WishCosts(problem, this);
        this.ties = new TieCosts(problem);
        this.totals = new Totals(problem, this);
        this.berths = new BerthLoads(problem, this);
        this.ways = new Ways(this);
    }

    public Weights weights() {
        return weights;
    }

    /** Sets what the levels cost from now on. */
    public void price(Weights changed) {
        weights = changed;
    }

    /** Cost of the whole state at the present prices (mm). */
    double cost() {
        return weights.cost(
                hard + overloaded + totals.hard() + waysHard,
                medium + totals.medium() + waysMedium + ties.over(),
                soft + wishes.total() + ties.soft() + totals.soft());
    }

    /** Amounts of the three levels (µm); a slot without a place counts as much as a metre of overlap. */
    public Amounts score() {
        return new Amounts(
                hard + overloaded + totals.hard() + waysHard + UNPLACED * unplaced(),
                medium + totals.medium() + waysMedium + ties.over(),
                soft + wishes.total() + ties.soft() + totals.soft());
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
            waysHard = ways.hard();
            waysMedium = ways.medium();
        }
        return true;
    }

    /** Walks the floor as it would be after the move that was scored last; what it finds goes with that move. */
    boolean walkProbed(double allowed) {
        seen = probed;
        boolean open = walk(allowed);
        seen = -1;
        return open;
    }

    /** Cost of what walking the floor found last (mm). */
    double waysCost() {
        return weights.cost(waysHard, waysMedium, 0);
    }

    /** Whether walking the floor matters at all. */
    boolean walked() {
        return ways.asked();
    }

    /** The option of a placed slot, as people on the floor see it. */
    Option seenOption(int slot) {
        return slot == seen ? problem().slot(slot).options().get(probedOption) : option[slot];
    }

    int seenX(int slot) {
        return slot == seen ? probedX : x[slot];
    }

    int seenY(int slot) {
        return slot == seen ? probedY : y[slot];
    }

    int seenZ(int slot) {
        return slot == seen ? probedZ : z[slot];
    }

    /**
     * Scores putting a slot at a place, or moving it there.
     *
     * @param bound the move is of no interest if it costs more than this
     * @return change of the cost (mm); infinite if above the bound
     */
    public double probe(int slot, int optionIndex, int px, int py, int pz, double bound) {
        Option candidate = problem().slot(slot).options().get(optionIndex);
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
        probedOverload = berths.changes(slot, candidate) ? berths.excess(slot, candidate) : overloaded;
        wishChange = wishes.probe(slot, candidate, px, py, pz);
        // Neither ties nor what the totals lack can come out below zero: most moves are too dear before both are known.
        double least = change(0, 0, -ties.overOf(slot), -ties.softOf(slot)) - before;
        if (pairs.probe(slot, candidate, px, py, pz, least, bound) > bound) {
            return Double.POSITIVE_INFINITY;
        }
        ties.probe(slot, candidate, px, py, pz);
        totals.assess();
        double change =
                change(totals.probedHard(), totals.probedMedium(), ties.overChange(), ties.softChange()) - before;
        change = pairs.plus(change);
        return change > bound ? Double.POSITIVE_INFINITY : change;
    }

    /** Change of the cost by what was scored, without pairs and with the old own costs of the slot still in it. */
    private double change(long totalsHard, long totalsMedium, long tiesOver, long tiesSoft) {
        return weights.cost(
                own.probedHard() + probedOverload - overloaded + totalsHard - totals.hard(),
                own.probedMedium() + totalsMedium - totals.medium() + tiesOver,
                own.probedSoft() - own.soft(probed) + totals.probedSoft() - totals.soft() + wishChange + tiesSoft);
    }

    /** Change of the cost by the move that was scored last, reckoned from the whole cost; not for slots with guests. */
    double probedChange() {
        double after = weights.cost(
                probedHard() + probedOverload + totals.probedHard() + waysHard,
                probedMedium() + totals.probedMedium() + waysMedium + ties.over() + ties.overChange(),
                probedSoft() + wishes.total() + wishChange + ties.soft() + ties.softChange() + totals.probedSoft());
        return after - cost();
    }

    private long probedHard() {
        return hard + own.probedHard() - own.hard(probed) + pairs.probedHard() - pairs.rowHard(probed);
    }

    private long probedMedium() {
        return medium + own.probedMedium() - own.medium(probed) + pairs.probedMedium() - pairs.rowMedium(probed);
    }

    private long probedSoft() {
        return soft + own.probedSoft() - own.soft(probed);
    }

    /** Makes the move that was scored last; its bound must not have been exceeded. */
    public void commit() {
        int slot = probed;
        hard = probedHard();
        medium = probedMedium();
        soft = probedSoft();
        overloaded = probedOverload;
        own.commit(slot);
        pairs.commit(slot);
        wishes.commit();
        ties.commit();
        totals.commit();
        stand(slot, probedOption, probedX, probedY, probedZ);
        reaches.set(slot, option[slot], probedX, probedY, probedZ);
        if (guestsOf(slot) > 0) {
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
        wishes.remove(slot);
        ties.remove(slot);
        totals.remove(slot);
        leave(slot);
    }

    /** Puts all slots at the given spots, hosts before guests; those without a spot are taken out. */
    public void restore(@Nullable Spot[] spots) {
        boolean[] done = new boolean[spots.length];
        for (int i = 0; i < spots.length; i++) {
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
        Option.Berth berth = problem().slot(slot).options().get(spot.option()).berth();
        if (berth != null) {
            restore(berth.slot(), spots, done);
        }
        put(slot, spot);
    }

    /** What a slot breaks, by its own or in a pair (µm, hard and medium together). */
    public long trouble(int slot) {
        return placed[slot]
                ? own.hard(slot) + own.medium(slot) + pairs.rowHard(slot) + pairs.rowMedium(slot)
                : Long.MAX_VALUE;
    }

    /** Height of the lowest thing of a slot above the floor (µm). */
    int lowest(int slot) {
        return reaches.z0[slot];
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
