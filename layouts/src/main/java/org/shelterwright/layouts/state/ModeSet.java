package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;

/** The modes of one situation that are allowed: with the trailer coupled, without it, or both. */
record ModeSet(Situation situation, boolean trailerOn, boolean trailerOff) {
    /** Groups modes by situation, in the order of their first mode. */
    static List<ModeSet> of(List<Mode> modes) {
        List<ModeSet> sets = new ArrayList<>(2);
        for (Mode mode : modes) {
            int last = sets.size() - 1;
            if (last >= 0 && sets.get(last).situation == mode.situation()) {
                ModeSet set = sets.get(last);
                sets.set(
                        last,
                        new ModeSet(set.situation, set.trailerOn || mode.trailer(), set.trailerOff || !mode.trailer()));
            } else {
                sets.add(new ModeSet(mode.situation(), mode.trailer(), !mode.trailer()));
            }
        }
        return sets;
    }
}
