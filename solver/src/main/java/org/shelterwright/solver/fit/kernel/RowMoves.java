package org.shelterwright.solver.fit.kernel;

import org.shelterwright.catalog.space.Axis;

/**
 * Moves of several units that stand in a row, as along a wall: one is pushed and pushes the next ones on, or two change
 * places and those between them make room. Single moves would have to pass through overlaps for these. Each is made step
 * by step in a trial that has begun. Not for several threads.
 */
final class RowMoves {
    /** Longest row that is moved at once. */
    private static final int MOST = 10;

    private static final int LONGEST_PUSH = 400_000;

    private final State state;
    private final Dice dice;
    private final Grounds grounds;
    private final Trial trial;
    private final int[] row = new int[MOST];
    private final int[] place = new int[3];

    RowMoves(State state, Dice dice, Grounds grounds, Trial trial) {
        this.state = state;
        this.dice = dice;
        this.grounds = grounds;
        this.trial = trial;
    }

    /**
     * Pushes a slot along an axis, and with it whatever then stands in its way.
     *
     * @return false if it came to nothing; the trial must then be undone
     */
    boolean push(int slot) {
        int axis = dice.below(3) == 0 ? 1 : 0;
        boolean up = dice.below(2) == 0;
        int way = 1 + dice.below(LONGEST_PUSH);
        if (!shift(slot, axis, state.low(slot, axis) + (up ? way : -way))) {
            return false;
        }
        int count = 1;
        row[0] = slot;
        for (int i = 0; i < count; i++) {
            int pusher = row[i];
            for (int j = 0; j < state.placed.length; j++) {
                if (pushes(pusher, j, axis, up)) {
                    if (count == MOST || !state.problem().slot(j).movable() || !clear(j, pusher, axis, up)) {
                        return false;
                    }
                    row[count++] = j;
                }
            }
        }
        return true;
    }

    private boolean pushes(int pusher, int j, int axis, boolean up) {
        if (j == pusher
                || !state.placed[j]
                || state.option[j].berth() != null
                || !state.meet(pusher, j)
                || !state.abreast(pusher, j, axis)) {
            return false;
        }
        int low = state.low(j, axis);
        int high = state.high(j, axis);
        boolean overlaps = low < state.high(pusher, axis) && state.low(pusher, axis) < high;
        long middle = (long) low + high - state.low(pusher, axis) - state.high(pusher, axis);
        return overlaps && (up ? middle >= 0 : middle < 0);
    }

    /** Moves a slot just clear of its pusher. */
    private boolean clear(int j, int pusher, int axis, boolean up) {
        int slack = slack(j, axis);
        int low = up ? state.high(pusher, axis) + slack : state.low(pusher, axis) - state.length(j, axis) - slack;
        return shift(j, axis, low);
    }

    /**
     * Lets two slots of a row change places: the outer ends stay, what stands between is moved by the difference of their
     * lengths.
     *
     * @param allowed greatest change of the cost of interest (mm)
     * @return false if it came to nothing or costs more; the trial must then be undone
     */
    boolean exchange(int a, int b, double allowed) {
        int axis = dice.below(3) == 0 ? 1 : 0;
        if (a == b
                || state.option[a].berth() != null
                || state.option[b].berth() != null
                || !state.meet(a, b)
                || !state.abreast(a, b, axis)) {
            return false;
        }
        int first = state.low(a, axis) <= state.low(b, axis) ? a : b;
        int last = first == a ? b : a;
        int from = state.low(first, axis);
        int to = state.high(last, axis);
        if (to - from < state.length(first, axis) + state.length(last, axis)) {
            return false;
        }
        int by = state.length(last, axis) - state.length(first, axis);
        int count = between(first, last, axis);
        if (count < 0) {
            return false;
        }
        for (int i = 0; i < count; i++) {
            if (by != 0 && !shift(row[i], axis, state.low(row[i], axis) + by)) {
                return false;
            }
        }
        return shift(first, axis, to - state.length(first, axis)) && shiftLast(last, axis, from, allowed);
    }

    /** The slots between two of a row; -1 if there are too many or some cannot move. */
    private int between(int first, int last, int axis) {
        int count = 0;
        for (int j = 0; j < state.placed.length; j++) {
            if (j != first
                    && j != last
                    && state.placed[j]
                    && state.option[j].berth() == null
                    && state.meet(first, j)
                    && state.low(j, axis) >= state.low(first, axis)
                    && state.high(j, axis) <= state.high(last, axis)
                    && (state.abreast(first, j, axis) || state.abreast(last, j, axis))) {
                if (count == MOST || !state.problem().slot(j).movable()) {
                    return -1;
                }
                row[count++] = j;
            }
        }
        return count;
    }

    private int slack(int slot, int axis) {
        return Math.max(0, grounds.anchors(state.option[slot]).pitch(Axis.values()[axis]) / 2 - 1);
    }

    /** Moves a slot along an axis to the anchor nearest to a place; false if it stays or cannot move. */
    private boolean shift(int slot, int axis, int low) {
        return moves(slot, axis, low)
                && trial.moveWithGuests(slot, state.optionNumber[slot], place[0], place[1], place[2]);
    }

    /** The same as the last step; false also if the whole costs more than is allowed. */
    private boolean shiftLast(int slot, int axis, int low, double allowed) {
        return moves(slot, axis, low)
                && trial.moveLast(slot, state.optionNumber[slot], place[0], place[1], place[2], allowed);
    }

    /** Finds the anchor nearest to a place along an axis; false if the slot is there. */
    private boolean moves(int slot, int axis, int low) {
        place[0] = state.x[slot];
        place[1] = state.y[slot];
        place[2] = state.z[slot];
        int before = place[axis];
        place[axis] = low;
        grounds.nearest(state.option[slot], place);
        return place[axis] != before;
    }
}
