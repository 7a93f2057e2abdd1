package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Whether units have a way past others, remembered with each unit over scenes that share it: a way stays one while nothing new
 * stands in it, and what was stuck stays so while all that bounds it stays. Gives yes or no only, so that an answer never
 * depends on what was asked before.
 */
public final class KeptWays {
    private static final int MOST = 3;

    private final Scene scene;
    private final UnitWays ways;

    /** An answer with the units that were there, by index. */
    private record Known(Passage passage, List<PlacedUnit> units, BitSet gone) {
        private boolean holds(List<PlacedUnit> now, BitSet goneNow) {
            if (passage.free()) {
                for (PlacedUnit other : now) {
                    boolean there = other != passage.unit() && !goneNow.get(other.index());
                    if (there && !was(other) && passage.meets(other)) {
                        return false;
                    }
                }
                return true;
            }
            if (passage.answer() != Passage.Answer.BLOCKED) {
                return false;
            }
            BitSet bounding = passage.frontier();
            for (int i = bounding.nextSetBit(0); i >= 0; i = bounding.nextSetBit(i + 1)) {
                if (i >= now.size() || goneNow.get(i) || now.get(i) != units.get(i)) {
                    return false;
                }
            }
            return true;
        }

        private boolean was(PlacedUnit other) {
            int index = other.index();
            return index < units.size() && units.get(index) == other && !gone.get(index);
        }
    }

    private static final class Memory {
        private final List<Known> known = new ArrayList<>();

        synchronized boolean free(PlacedUnit unit, Scene scene, BitSet gone, UnitWays ways) {
            for (Known one : known) {
                if (one.holds(scene.units(), gone)) {
                    return one.passage().free();
                }
            }
            Passage passage = ways.out(unit, gone);
            known.add(0, new Known(passage, scene.units(), (BitSet) gone.clone()));
            if (known.size() > MOST) {
                known.remove(MOST);
            }
            return passage.free();
        }
    }

    public KeptWays(Scene scene) {
        this.scene = scene;
        this.ways = new UnitWays(scene);
    }

    /** Whether a unit has a way past all that are not gone. */
    public boolean free(PlacedUnit unit, BitSet gone) {
        return unit.derived(Memory.class, any -> new Memory()).free(unit, scene, gone, ways);
    }

    /** For asking afresh. */
    public UnitWays ways() {
        return ways;
    }
}
