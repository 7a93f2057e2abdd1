package org.shelterwright.layouts.cable;

/**
 * The length to cut: {@code (laid + 2 s) (1 + q)}, rounded up to whole centimetres, with the spare s at each end and the share q
 * for laying.
 *
 * <p>Source: common practice.
 */
public final class CutLength {
    private static final long STEP = 10_000;

    private CutLength() {}

    /**
     * Gives the length (µm).
     *
     * @param laid length of the route (µm)
     * @param end spare at each end (µm)
     * @param share spare as a share
     */
    public static long of(long laid, double end, double share) {
        return (long) Math.ceil((laid + 2 * end) * (1 + share) / STEP - 1e-9) * STEP;
    }
}
