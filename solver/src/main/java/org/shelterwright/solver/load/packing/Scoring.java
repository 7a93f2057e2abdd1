package org.shelterwright.solver.load.packing;

import java.util.Arrays;
import org.shelterwright.solver.load.space.SpaceRule;

/**
 * How blocks are compared that fit a space. The score of a block is {@code V·n^-γ·(1 - loss)·C^α}: its volume, the number
 * of its pieces, the share of the space that can no longer be filled beside it, and the share of its surface in contact
 * (after Araya, Guerrero and Nuñez, VCS: a new heuristic function for selecting boxes in the single container loading
 * problem, Computers and Operations Research 82 (2017); from memory). γ stands in the keys of the table.
 *
 * @param contact C^α for C = 0, 1/1024 ... 1
 * @param near a neighbour counts as touching within this share of the block's own extent
 * @param noise each score is lowered by a share from 0 to this one by chance
 * @param salt of the chance
 * @param minding whether the loss is minded
 */
@SuppressWarnings("ArrayRecordComponent") // made once, read in the innermost loop
public record Scoring(double[] contact, double near, double noise, long salt, boolean minding, SpaceRule rule) {
    static final int STEPS = 1_024;

    /** Scores without noise. */
    public static Scoring of(double alpha, SpaceRule rule) {
        return new Scoring(powers(alpha), 0.04, 0, 0, true, rule);
    }

    /** Contact shares to a power, for {@link #contact}. */
    public static double[] powers(double alpha) {
        double[] powers = new double[STEPS + 1];
        Arrays.setAll(powers, i -> Math.pow((double) i / STEPS, alpha));
        return powers;
    }

    /** The same with chance in it. */
    public Scoring shaken(double[] powers, double share, long by, SpaceRule other) {
        return new Scoring(powers, near, share, by, minding, other);
    }

    /** The factor of chance of a block. */
    double luck(int block) {
        long h = (salt ^ block) * 0x9E3779B97F4A7C15L;
        h ^= h >>> 32;
        h *= 0xD6E8FEB86659FD93L;
        return 1 - noise * ((h >>> 40) * 0x1.0p-24);
    }
}
