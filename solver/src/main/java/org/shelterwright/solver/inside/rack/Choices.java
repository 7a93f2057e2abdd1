package org.shelterwright.solver.inside.rack;

import java.util.List;

/**
 * How many of each kind there are, and numbers for every choice of some of them (mixed radix).
 *
 * @param counts by kind
 * @param step by kind: what one more of it adds to the number
 * @param size how many choices there are
 */
@SuppressWarnings("ArrayRecordComponent") // Inside the search, and never compared.
record Choices(int[] counts, int[] step, int size) {
    /** More choices than this are too many to list. */
    static final int MOST = 400_000;

    /** The choices of some pieces; of size zero if there are too many. */
    static Choices of(List<RackPiece> pieces, int kinds) {
        int[] counts = new int[kinds];
        pieces.forEach(piece -> counts[piece.kind()]++);
        int[] step = new int[kinds];
        long size = 1;
        for (int k = 0; k < kinds; k++) {
            step[k] = (int) Math.min(Integer.MAX_VALUE, size);
            size *= counts[k] + 1L;
            if (size > MOST) {
                return new Choices(counts, step, 0);
            }
        }
        return new Choices(counts, step, (int) size);
    }

    /** How many of a kind a choice holds. */
    int held(int choice, int kind) {
        return choice / step[kind] % (counts[kind] + 1);
    }

    /** Whether a choice lies within another. */
    boolean within(int part, int whole) {
        for (int k = 0; k < counts.length; k++) {
            if (held(part, k) > held(whole, k)) {
                return false;
            }
        }
        return true;
    }
}
