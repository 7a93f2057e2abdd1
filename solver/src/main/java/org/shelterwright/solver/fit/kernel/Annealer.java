package org.shelterwright.solver.fit.kernel;

import java.util.function.Consumer;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.Slot;

/**
 * Simulated annealing (Kirkpatrick, Gelatt, Vecchi: Optimization by simulated annealing, 1983) over the places of all
 * slots, with limits priced by the amount by which they break. The acceptance threshold is drawn before a move is scored,
 * so that scoring can stop as soon as the move is too dear. Not for several threads.
 */
public final class Annealer {
    private static final int REPRICE = 512;

    /** How often in a round the limits on moments of mass are asked anew. */
    private static final int TOUCHES = 10;

    private final State state;
    private final Dice dice;
    private final Meter meter;
    private final Planes planes;
    private final Grounds grounds;
    private final Proposals proposals;
    private final Trial trial;
    private final RowMoves rows;
    private final Construction construction;
    private final int[] movable;
    private final int[] near;
    private final Consumer<Amounts> improved;
    private boolean walking;

    /**
     * Prepares annealing of a state.
     *
     * @param planes the limits on moments of mass as far as this lane knows them
     * @param improved hears of each new best score
     */
    public Annealer(State state, Dice dice, Meter meter, Planes planes, Consumer<Amounts> improved) {
        this.state = state;
        this.dice = dice;
        this.meter = meter;
        this.planes = planes;
        this.improved = improved;
        this.grounds = new Grounds(state);
        this.proposals = new Proposals(state, dice, grounds);
        this.trial = new Trial(state, grounds);
        this.rows = new RowMoves(state, dice, grounds, trial);
        this.construction = new Construction(state, dice);
        this.near = new int[state.problem().size()];
        this.movable = state.problem().slots().stream()
                .filter(slot -> slot.movable() && state.placed[slot.index()])
                .mapToInt(Slot::index)
                .toArray();
    }

    /** Runs one round; ends early when the meter is over. The best state seen at strict prices goes to {@code best}. */
    public void round(Schedule schedule, Best best) {
        if (movable.length == 0) {
            best.offer(state);
            return;
        }
        double temperature = schedule.hot();
        Amounts lowest = best.score();
        long start = meter.used();
        long next = start;
        long nextTouch = start;
        walking = false;
        state.walk();
        while (!meter.over() && meter.used() - start < schedule.moves()) {
            if (meter.used() >= next) {
                double share = (double) (meter.used() - start) / schedule.moves();
                temperature = schedule.temperature(share);
                state.price(schedule.weights(share));
                next += REPRICE;
                if (meter.used() >= nextTouch) {
                    planes.touch(state);
                    nextTouch += Math.max(REPRICE, schedule.moves() / TOUCHES);
                }
                if (!walking && state.walked()) {
                    state.walk();
                    walking = share >= schedule.walkFrom();
                }
            }
            double threshold = -temperature * Math.log(1 - dice.share());
            meter.tick();
            if (move(threshold)
                    && (walking || !state.walked())
                    && (lowest == null || state.score().compareTo(lowest) < 0)) {
                best.offer(state);
                lowest = best.score();
                improved.accept(state.score());
            }
        }
        state.price(Weights.STRICT);
        planes.touch(state);
        state.walk();
        if (best.offer(state)) {
            improved.accept(state.score());
        }
    }

    /** Tries one move; true if it was made. */
    private boolean move(double threshold) {
        int kind = dice.below(1000);
        int slot = pick();
        if (kind < 280) {
            return proposals.shift(slot) && one(slot, threshold);
        } else if (kind < 580) {
            return proposals.snap(slot) && one(slot, threshold);
        } else if (kind < 660) {
            return proposals.remount(slot) && one(slot, threshold);
        } else if (kind < 730) {
            return proposals.anywhere(slot) && one(slot, threshold);
        } else if (kind < 800) {
            return proposals.slide(slot) && one(slot, threshold);
        } else if (kind < 870) {
            return swap(slot, movable[dice.below(movable.length)], threshold);
        } else if (kind < 930) {
            trial.begin();
            return settle(rows.push(slot), threshold);
        } else if (kind < 985) {
            trial.begin();
            return settle(rows.exchange(slot, movable[dice.below(movable.length)], threshold), threshold);
        } else if (kind < 999 || dice.below(20) != 0) {
            return chain(slot, threshold);
        }
        return recreate(slot, threshold);
    }

    /** Any slot; now and then the one of three that is most in trouble. */
    private int pick() {
        int slot = movable[dice.below(movable.length)];
        if (dice.below(4) == 0) {
            for (int i = 0; i < 2; i++) {
                int other = movable[dice.below(movable.length)];
                if (state.trouble(other) > state.trouble(slot)) {
                    slot = other;
                }
            }
        }
        return slot;
    }

    private boolean one(int slot, double threshold) {
        if (state.guestsOf(slot) > 0) {
            trial.begin();
            boolean whole = trial.moveWithGuests(slot, proposals.option(), proposals.x(), proposals.y(), proposals.z());
            return settle(whole, threshold);
        }
        double change = state.probe(slot, proposals.option(), proposals.x(), proposals.y(), proposals.z(), threshold);
        if (change > threshold) {
            return false;
        }
        if (!walking || !inTheWay(slot)) {
            state.commit();
            return true;
        }
        double whole = state.probedChange();
        if (whole > threshold || !state.walkProbed(threshold - whole + state.waysCost())) {
            return false;
        }
        state.commit();
        return true;
    }

    /** Whether the unit, where it is or where it would go, can be in the way of people or be walked to. */
    private boolean inTheWay(int slot) {
        int headroom = state.problem().access().headroom();
        return state.problem().slot(slot).onStation() && (state.lowest(slot) < headroom || proposals.z() < headroom);
    }

    private boolean swap(int a, int b, double threshold) {
        if (a == b || !proposals.inPlaceOf(a, b)) {
            return false;
        }
        int option = proposals.option();
        int x = proposals.x();
        int y = proposals.y();
        int z = proposals.z();
        if (!proposals.inPlaceOf(b, a)) {
            return false;
        }
        trial.begin();
        boolean whole = trial.moveWithGuests(b, proposals.option(), proposals.x(), proposals.y(), proposals.z())
                && grounds.open(a, state.problem().slot(a).options().get(option))
                && trial.moveLast(a, option, x, y, z, threshold);
        return settle(whole, threshold);
    }

    private boolean chain(int a, double threshold) {
        int b = movable[dice.below(movable.length)];
        int c = movable[dice.below(movable.length)];
        if (a == b || b == c || a == c || !proposals.inPlaceOf(a, b)) {
            return false;
        }
        int optionA = proposals.option();
        int[] placeA = {proposals.x(), proposals.y(), proposals.z()};
        if (!proposals.inPlaceOf(b, c)) {
            return false;
        }
        int optionB = proposals.option();
        int[] placeB = {proposals.x(), proposals.y(), proposals.z()};
        if (!proposals.inPlaceOf(c, a)) {
            return false;
        }
        trial.begin();
        boolean whole = trial.moveWithGuests(c, proposals.option(), proposals.x(), proposals.y(), proposals.z())
                && grounds.open(b, state.problem().slot(b).options().get(optionB))
                && trial.moveWithGuests(b, optionB, placeB[0], placeB[1], placeB[2])
                && grounds.open(a, state.problem().slot(a).options().get(optionA))
                && trial.moveLast(a, optionA, placeA[0], placeA[1], placeA[2], threshold);
        return settle(whole, threshold);
    }

    /** Takes a slot and some of its neighbours out and puts them back greedily. */
    private boolean recreate(int slot, double threshold) {
        int count = state.neighbours(slot, near);
        trial.begin();
        int taken = 0;
        int[] out = new int[5];
        out[taken++] = slot;
        for (int i = 0; i < count && taken < out.length; i++) {
            int other = near[dice.below(count)];
            if (state.problem().slot(other).movable() && dice.below(2) == 0) {
                out[taken++] = other;
            }
        }
        for (int i = 0; i < taken; i++) {
            if (state.guestsOf(out[i]) > 0) {
                trial.undo();
                return false;
            }
            trial.remove(out[i]);
        }
        boolean whole = true;
        for (int i = taken - 1; i >= 0 && whole; i--) {
            whole = state.placed[out[i]] || construction.placeOne(out[i]);
        }
        meter.add(construction.takeTried());
        return settle(whole, threshold);
    }

    private boolean settle(boolean whole, double threshold) {
        if (!whole || trial.change() > threshold) {
            trial.undo();
            return false;
        }
        if (walking && !state.walk(threshold - trial.change() + state.waysCost())) {
            trial.undo();
            return false;
        }
        return true;
    }
}
