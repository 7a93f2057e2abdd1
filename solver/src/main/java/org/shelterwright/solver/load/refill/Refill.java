package org.shelterwright.solver.load.refill;

import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.load.beam.Beam;
import org.shelterwright.solver.load.beam.Effort;
import org.shelterwright.solver.load.beam.Trace;
import org.shelterwright.solver.load.packing.Packing;
import org.shelterwright.solver.load.packing.Scoring;
import org.shelterwright.solver.load.space.SpaceRule;

/**
 * Large neighbourhood search: clears a region of the load with all that stands above it, and fills it anew with a narrow
 * beam and scores with chance in them. A little worse is accepted while there is work left, ever less so. After many
 * rounds without a new best it goes back to the best and widens the beam.
 */
public final class Refill {
    private static final int IDLE_ROUNDS = 60;
    private static final double WIDER = 1.3;
    private static final double THRESHOLD = 0.002;
    private static final double[] ALPHAS = {0.7, 0.3, 2};

    private final Beam beam;
    private final Packing base;
    private final Dice dice;
    private final Region region;
    private final double roomVolume;
    private final double[][] powers = new double[ALPHAS.length][];
    private final Trace current = new Trace();
    private final Trace tried = new Trace();
    private long rounds;

    public Refill(Beam beam, Packing like, Dice dice) {
        this.beam = beam;
        this.base = new Packing(like.table());
        this.dice = dice;
        this.region = new Region(like.table(), like.pinned(), dice);
        this.roomVolume = like.table().problem().roomVolume();
        for (int a = 0; a < ALPHAS.length; a++) {
            powers[a] = Scoring.powers(ALPHAS[a]);
        }
    }

    /**
     * Mends until the work is done.
     *
     * @param best load to begin with; takes over what is found
     * @param usual scores without chance
     * @param found called whenever there is a new best
     */
    public void run(Trace best, Scoring usual, Effort effort, Runnable found) {
        double begun = effort.share();
        double width = 5;
        int idle = 0;
        current.copy(best);
        while (!effort.over()) {
            rounds++;
            region.choose(current);
            if (region.removed() == 0) {
                effort.spend(1);
                continue;
            }
            Scoring scoring = scoring(usual);
            clear(scoring.rule());
            tried.clear();
            int w = Math.max(1, (int) Math.round(width * Math.sqrt(8.0 / region.removed())));
            beam.run(base, w, scoring, effort, tried);
            double left = Math.max(0, 1 - (effort.share() - begun) / (1 - begun));
            if (tried.worth() >= current.worth() - THRESHOLD * roomVolume * left) {
                current.copy(tried);
            }
            if (tried.worth() > best.worth()) {
                best.copy(tried);
                idle = 0;
                found.run();
            } else if (++idle >= IDLE_ROUNDS) {
                current.copy(best);
                width *= WIDER;
                idle = 0;
            }
        }
    }

    /** Rounds made so far. */
    public long rounds() {
        return rounds;
    }

    private Scoring scoring(Scoring usual) {
        double noise = dice.below(3) == 0 ? 0 : 0.2 * dice.share();
        SpaceRule rule = usual.rule() == SpaceRule.LOWEST && dice.below(4) == 0 ? SpaceRule.NEAREST : usual.rule();
        return usual.shaken(powers[dice.below(ALPHAS.length)], noise, dice.next(), rule);
    }

    /** Rebuilds what stays, from the lowest block up. */
    private void clear(SpaceRule rule) {
        base.clear(rule);
        for (int i : current.upwards()) {
            if (i >= base.pinned() && !region.out(i)) {
                current.put(i, base);
            }
        }
    }
}
