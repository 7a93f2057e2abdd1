package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/** Makes moves as values, for a search that carries them out itself. */
public final class MoveMaker {
    private static final int TRIES = 50;

    private final State state;
    private final Dice dice;
    private final Proposals proposals;
    private final int[] movable;

    /** One slot and where it goes. */
    public record Step(int slot, Spot spot) {}

    public MoveMaker(State state, Dice dice) {
        this.state = state;
        this.dice = dice;
        this.proposals = new Proposals(state, dice, new Grounds(state));
        this.movable = state.problem().slots().stream()
                .filter(slot -> slot.movable() && state.isPlaced(slot.index()))
                .mapToInt(Slot::index)
                .toArray();
    }

    public boolean hasMovable() {
        return movable.length > 0;
    }

    /** A move of any slot that changes something, if a few tries find one; otherwise no steps. */
    public List<Step> next() {
        for (int i = 0; i < TRIES; i++) {
            List<Step> steps = next(movable[dice.below(movable.length)]);
            if (!steps.isEmpty()) {
                return steps;
            }
        }
        return List.of();
    }

    /** A move of one slot and what it carries; no steps if it came to nothing. */
    public List<Step> next(int slot) {
        int kind = dice.below(10);
        boolean made = kind < 4
                ? proposals.shift(slot)
                : kind < 7 ? proposals.snap(slot) : kind < 8 ? proposals.remount(slot) : proposals.slide(slot);
        return made
                ? withGuests(slot, new Spot(proposals.option(), proposals.x(), proposals.y(), proposals.z()))
                : List.of();
    }

    /** What a unit carries shifts with it; a turn with something on it is not tried here. */
    private List<Step> withGuests(int slot, Spot spot) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(slot, spot));
        if (state.guestsOf(slot) == 0) {
            return steps;
        }
        if (spot.option() != state.optionNumber[slot]) {
            return List.of();
        }
        int dx = spot.x() - state.x[slot];
        int dy = spot.y() - state.y[slot];
        int dz = spot.z() - state.z[slot];
        for (int i = 0; i < steps.size(); i++) {
            int host = steps.get(i).slot();
            for (int j = 0; j < state.placed.length; j++) {
                if (state.placed[j]) {
                    Option.Berth berth = state.option[j].berth();
                    if (berth != null && berth.slot() == host) {
                        steps.add(new Step(
                                j, new Spot(state.optionNumber[j], state.x[j] + dx, state.y[j] + dy, state.z[j] + dz)));
                    }
                }
            }
        }
        return steps;
    }
}
