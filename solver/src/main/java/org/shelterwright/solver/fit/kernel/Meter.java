package org.shelterwright.solver.fit.kernel;

import java.util.function.BooleanSupplier;

/** Counts the moves of one lane and says when it must end: at its allowance, or when asked to. Not for several threads. */
public final class Meter {
    private final long allowance;
    private final BooleanSupplier asked;
    private long used;
    private boolean over;

    /**
     * Begins a count.
     *
     * @param allowance moves that the lane may try
     * @param asked whether someone asks to end; read every few hundred moves
     */
    public Meter(long allowance, BooleanSupplier asked) {
        this.allowance = allowance;
        this.asked = asked;
    }

    public long used() {
        return used;
    }

    public long left() {
        return Math.max(0, allowance - used);
    }

    public void add(long moves) {
        used += moves;
        look();
    }

    /** Counts one move. */
    void tick() {
        if ((++used & 255) == 0) {
            look();
        }
    }

    public boolean over() {
        return over || used >= allowance;
    }

    private void look() {
        over |= asked.getAsBoolean();
    }
}
