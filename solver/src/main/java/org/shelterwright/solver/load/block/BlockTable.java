package org.shelterwright.solver.load.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import org.shelterwright.solver.load.model.LoadProblem;

/**
 * The blocks of a problem in the order of a key, the greatest first, with bit sets that tell which of them fit a length and
 * which the stock suffices for. Read by many, changed by none.
 */
public final class BlockTable {
    private final LoadProblem problem;
    private final Block[] blocks;
    private final double[] keys;
    private final int[] extents;
    private final int words;
    private final Fitting alongX;
    private final Fitting alongY;
    private final Fitting alongZ;
    private final long[][][] enough;
    private final int leastSide;
    private final int leastHeight;

    /** Which blocks are at most so long in one direction. */
    private static final class Fitting {
        /** Up to this length the ranks of all lengths are kept. */
        private static final int MOST_KEPT = 4_096;

        private final int[] lengths;
        private final long[][] masks;
        private final int[] ranks;

        Fitting(Block[] blocks, int words, ToIntFunction<Block> length) {
            lengths = Arrays.stream(blocks).mapToInt(length).distinct().sorted().toArray();
            masks = new long[lengths.length + 1][words];
            for (int b = 0; b < blocks.length; b++) {
                int rank = Arrays.binarySearch(lengths, length.applyAsInt(blocks[b]));
                masks[rank + 1][b >> 6] |= 1L << b;
            }
            for (int r = 1; r <= lengths.length; r++) {
                for (int w = 0; w < words; w++) {
                    masks[r][w] |= masks[r - 1][w];
                }
            }
            ranks = new int[MOST_KEPT];
            Arrays.setAll(ranks, this::rank);
        }

        long[] upTo(int length) {
            return masks[length < ranks.length ? ranks[length] : rank(length)];
        }

        private int rank(int length) {
            int at = Arrays.binarySearch(lengths, length);
            return at >= 0 ? at + 1 : -at - 1;
        }
    }

    /**
     * Puts the blocks in order.
     *
     * @param gamma how much many pieces count against a block: its key is value over pieces to this power
     */
    public BlockTable(LoadProblem problem, List<Block> made, double gamma) {
        this(problem, made, gamma, block -> 1);
    }

    /**
     * Puts the blocks in order.
     *
     * @param gamma how much many pieces count against a block: its key is value over pieces to this power
     * @param favour factor of the key of a block, for what its value does not tell
     */
    public BlockTable(LoadProblem problem, List<Block> made, double gamma, ToDoubleFunction<Block> favour) {
        this.problem = problem;
        List<Block> sorted = new ArrayList<>(made);
        ToDoubleFunction<Block> key =
                block -> block.value() * Math.pow(block.pieces(), -gamma) * favour.applyAsDouble(block);
        sorted.sort((a, b) -> Double.compare(key.applyAsDouble(b), key.applyAsDouble(a)));
        blocks = sorted.toArray(new Block[0]);
        keys = sorted.stream().mapToDouble(key).toArray();
        extents = new int[4 * blocks.length];
        for (int b = 0; b < blocks.length; b++) {
            extents[4 * b] = blocks[b].dx();
            extents[4 * b + 1] = blocks[b].dy();
            extents[4 * b + 2] = blocks[b].dz();
        }
        words = (blocks.length + 63) >> 6;
        alongX = new Fitting(blocks, words, Block::dx);
        alongY = new Fitting(blocks, words, Block::dy);
        alongZ = new Fitting(blocks, words, Block::dz);
        enough = new long[problem.kinds().size()][][];
        for (int k = 0; k < enough.length; k++) {
            enough[k] = masksOf(k, problem.kinds().get(k).count());
        }
        leastSide = sorted.stream()
                .mapToInt(block -> Math.min(block.dx(), block.dy()))
                .min()
                .orElse(Integer.MAX_VALUE);
        leastHeight = sorted.stream().mapToInt(Block::dz).min().orElse(Integer.MAX_VALUE);
    }

    /** For each number of pieces left, the blocks that need no more of this kind; from {@code count} on all of them. */
    private long[][] masksOf(int kind, int count) {
        int[] needs = new int[blocks.length];
        int most = 0;
        for (int b = 0; b < blocks.length; b++) {
            needs[b] = blocks[b].count(kind);
            most = Math.max(most, needs[b]);
        }
        long[][] masks = new long[Math.min(count, most) + 1][words];
        for (int left = 0; left < masks.length; left++) {
            for (int b = 0; b < blocks.length; b++) {
                if (needs[b] <= left) {
                    masks[left][b >> 6] |= 1L << b;
                }
            }
        }
        return masks;
    }

    /** The block of a single piece in one stance; -1 if there is none. */
    public int single(int kind, int dx, int dy, int dz) {
        for (int b = 0; b < blocks.length; b++) {
            Block one = blocks[b];
            if (one.pieces() == 1 && one.kinds()[0] == kind && one.dx() == dx && one.dy() == dy && one.dz() == dz) {
                return b;
            }
        }
        return -1;
    }

    public LoadProblem problem() {
        return problem;
    }

    public int size() {
        return blocks.length;
    }

    public int words() {
        return words;
    }

    public Block block(int b) {
        return blocks[b];
    }

    /** Extent along x; kept apart from the blocks, since it is read in the innermost loop. */
    public int dx(int b) {
        return extents[4 * b];
    }

    public int dy(int b) {
        return extents[4 * b + 1];
    }

    public int dz(int b) {
        return extents[4 * b + 2];
    }

    public double key(int b) {
        return keys[b];
    }

    /** The blocks that are at most so long along x. */
    public long[] alongX(int length) {
        return alongX.upTo(length);
    }

    public long[] alongY(int length) {
        return alongY.upTo(length);
    }

    public long[] alongZ(int length) {
        return alongZ.upTo(length);
    }

    /** The blocks for which so many pieces of a kind are enough. */
    public long[] enough(int kind, int left) {
        long[][] masks = enough[kind];
        return masks[Math.min(left, masks.length - 1)];
    }

    /** The shortest horizontal edge of any block: a place that is narrower is of no use. */
    public int leastSide() {
        return leastSide;
    }

    /** The lowest block. */
    public int leastHeight() {
        return leastHeight;
    }
}
