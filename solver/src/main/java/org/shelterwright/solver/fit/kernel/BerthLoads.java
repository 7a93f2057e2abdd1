package org.shelterwright.solver.fit.kernel;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;

/**
 * What stands on or hangs under each support against its rating: masses with growth, uncertainty and full tanks, and all that rests on them in
 * turn. Worked out anew whenever a unit changes what it is mounted on.
 */
final class BerthLoads {
    /** Supports of one unit that are told apart; further ones share the last place. */
    private static final int MOST = 8;

    private final State state;
    private final int n;
    private final long[] grams;
    private final boolean[][] there;
    private final long[] load;
    private final boolean any;

    BerthLoads(FitProblem problem, State state) {
        this.state = state;
        this.n = problem.size();
        this.grams = new long[n];
        this.there = new boolean[2][n];
        this.load = new long[n * MOST];
        MassModel model = new MassModel(problem.scene().rules());
        for (Slot slot : problem.slots()) {
            MassData mass = slot.item().mass();
            double worst =
                    model.grownKg(mass).orElse(0) + model.uncertaintyKg(mass).orElse(0);
            double full = slot.item().tanks().stream().mapToDouble(Tank::fullKg).sum();
            grams[slot.index()] = Math.round(1000 * (worst + full));
            there[0][slot.index()] = slot.onStation();
            there[1][slot.index()] = slot.onTheRoad();
        }
        this.any = problem.slots().stream()
                .flatMap(slot -> slot.options().stream())
                .anyMatch(option -> option.berth() != null);
    }

    /** Whether an option changes what the unit of a slot rests on. */
    boolean changes(int slot, @Nullable Option candidate) {
        if (!any) {
            return false;
        }
        Option.Berth before = state.placed[slot] ? state.option[slot].berth() : null;
        Option.Berth after = candidate == null ? null : candidate.berth();
        if (before == null || after == null) {
            return before != after;
        }
        return before.slot() != after.slot() || before.number() != after.number();
    }

    /** What all supports are overloaded by (g, which is thousandths of a kg), the worse situation each, if a slot took an option. */
    long excess(int slot, @Nullable Option candidate) {
        long[] worst = new long[n * MOST];
        long sum = 0;
        for (boolean[] present : there) {
            Arrays.fill(load, 0);
            for (int j = 0; j < n; j++) {
                if (present[j] && option(j, slot, candidate) != null) {
                    carry(j, slot, candidate);
                }
            }
            for (int j = 0; j < n; j++) {
                Option option = present[j] ? option(j, slot, candidate) : null;
                Option.Berth berth = option == null ? null : option.berth();
                if (berth != null && berth.ratingKg() != null) {
                    int at = key(berth);
                    long over = load[at] - Math.round(1000 * berth.ratingKg());
                    if (over > worst[at]) {
                        sum += over - worst[at];
                        worst[at] = over;
                    }
                }
            }
        }
        return sum;
    }

    /** Adds the mass of a unit to every support below it. */
    private void carry(int unit, int slot, @Nullable Option candidate) {
        Option at = option(unit, slot, candidate);
        for (int links = 0; links < n && at != null; links++) {
            Option.Berth berth = at.berth();
            if (berth == null) {
                return;
            }
            load[key(berth)] += grams[unit];
            at = option(berth.slot(), slot, candidate);
        }
    }

    private @Nullable Option option(int j, int slot, @Nullable Option candidate) {
        if (j == slot) {
            return candidate;
        }
        return state.placed[j] ? state.option[j] : null;
    }

    private static int key(Option.Berth berth) {
        return berth.slot() * MOST + Math.min(MOST - 1, berth.number());
    }
}
