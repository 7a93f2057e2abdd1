package org.shelterwright.solver.fit.model;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.QuarterTurn;

/** What draws two slots on station together, or one slot to a spot of the body: a length that should be short and may be limited. */
public interface TieTerm {
    /**
     * Where a tie ends, and where that meets the nearest tray, as far as trays matter.
     *
     * @param tray number of the tray; -1 if there is none
     * @param station along the tray (µm)
     * @param away from the end to the tray (µm)
     */
    record Foot(int x, int y, int z, int tray, int station, int away) {
        /** An end for which trays do not matter. */
        static Foot at(int x, int y, int z) {
            return new Foot(x, y, z, -1, 0, 0);
        }
    }

    int a();

    /** Other slot; -1 if the other end is fixed to the body. */
    int b();

    /** What it may be (µm); {@code Integer.MAX_VALUE} if that is not limited. */
    int longest();

    /** The end at a slot whose low corner is at a place. */
    Foot foot(boolean first, QuarterTurn turn, int x, int y, int z);

    /** The end that is fixed to the body, if {@code b} is -1. */
    Foot fixed();

    /** Length between two ends (µm); zero as long as one of them has no place. */
    long length(@Nullable Foot one, @Nullable Foot other);
}
