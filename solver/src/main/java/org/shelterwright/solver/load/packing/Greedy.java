package org.shelterwright.solver.load.packing;

/** Completes a load with the best block for each space in turn. */
public final class Greedy {
    /** After so many blocks the sums of edges are worked out anew. */
    private static final int REFRESH = 8;

    private final Chooser chooser;
    private long steps;

    public Greedy(Chooser chooser) {
        this.chooser = chooser;
    }

    /** Fills the packing until no space takes anything more, and tells what it is worth. The chooser is to be refreshed before. */
    public double complete(Packing packing, Scoring scoring) {
        int put = 0;
        while (true) {
            int s = packing.spaces().next();
            if (s < 0) {
                if (!chooser.rule().goOn(packing)) {
                    return chooser.rule().worth(packing);
                }
                continue;
            }
            steps++;
            int b = chooser.best(packing, s, scoring);
            if (b < 0) {
                packing.spaces().kill(s);
                continue;
            }
            packing.put(b, s);
            if (++put % REFRESH == 0) {
                chooser.refresh(packing);
            }
        }
    }

    /** Spaces looked at since the beginning: the measure of work. */
    public long steps() {
        return steps;
    }
}
