package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/** A move of several slots that is made step by step and can be undone. */
final class Trial {
    /** More than what sums of costs are off by (mm). */
    private static final double ROUNDING = 1e-3;

    private final State state;
    private final Grounds grounds;
    private final List<Integer> slots = new ArrayList<>();
    private final List<@Nullable Spot> before = new ArrayList<>();
    private double costBefore;

    Trial(State state, Grounds grounds) {
        this.state = state;
        this.grounds = grounds;
    }

    void begin() {
        slots.clear();
        before.clear();
        costBefore = state.cost();
    }

    /** Change of the cost since the beginning (mm). */
    double change() {
        return state.cost() - costBefore;
    }

    /** Puts everything back, hosts before what they carry. */
    void undo() {
        for (int i = 0; i < slots.size(); i++) {
            int slot = slots.get(i);
            if (slots.indexOf(slot) == i) {
                Spot spot = before.get(i);
                if (spot == null) {
                    state.remove(slot);
                } else {
                    state.put(slot, spot);
                }
            }
        }
        slots.clear();
        before.clear();
    }

    void remove(int slot) {
        note(slot);
        state.remove(slot);
    }

    /** Moves one slot; what it carries stays behind. */
    void move(int slot, int option, int x, int y, int z) {
        note(slot);
        state.probe(slot, option, x, y, z, Double.POSITIVE_INFINITY);
        state.commit();
    }

    /**
     * Moves a slot with all that it carries, as the last step.
     *
     * @param allowed greatest change of the cost of interest (mm)
     * @return false if a guest cannot come along or the whole costs more; the trial must then be undone
     */
    boolean moveLast(int slot, int option, int x, int y, int z, double allowed) {
        if (state.guestsOf(slot) > 0) {
            return moveWithGuests(slot, option, x, y, z);
        }
        double bound = allowed - change() + ROUNDING;
        if (state.probe(slot, option, x, y, z, bound) > bound) {
            return false;
        }
        note(slot);
        state.commit();
        return true;
    }

    /**
     * Moves a slot with all that it carries.
     *
     * @return false if a guest cannot come along; the trial must then be undone
     */
    boolean moveWithGuests(int slot, int option, int x, int y, int z) {
        if (!state.placed[slot] || state.guestsOf(slot) == 0) {
            move(slot, option, x, y, z);
            return true;
        }
        Option from = state.option[slot];
        Point fromAt = new Point(state.x[slot], state.y[slot], state.z[slot]);
        Option to = state.problem().slot(slot).options().get(option);
        QuarterTurn turned =
                QuarterTurn.values()[(to.turn().ordinal() - from.turn().ordinal() + 4) % 4];
        List<Integer> guests = new ArrayList<>();
        for (int j = 0; j < state.placed.length; j++) {
            if (state.placed[j]) {
                Option.Berth berth = state.option[j].berth();
                if (berth != null && berth.slot() == slot) {
                    guests.add(j);
                }
            }
        }
        move(slot, option, x, y, z);
        for (int guest : guests) {
            if (!follow(guest, from, fromAt, turned, new Point(x, y, z))) {
                return false;
            }
        }
        return true;
    }

    private boolean follow(int guest, Option hostFrom, Point hostFromAt, QuarterTurn turned, Point hostAt) {
        Option from = state.option[guest];
        int option = turnedOption(guest, from, from.turn().plus(turned));
        if (option < 0) {
            return false;
        }
        Point relative = new Point(state.x[guest], state.y[guest], state.z[guest]).minus(hostFromAt);
        Box box = turned.apply(Box.of(relative, from.size()), hostFrom.size());
        int[] place = {box.x0() + hostAt.x(), box.y0() + hostAt.y(), box.z0() + hostAt.z()};
        Option to = state.problem().slot(guest).options().get(option);
        if (grounds.anchors(to).isEmpty()) {
            return false;
        }
        grounds.nearest(to, place);
        return moveWithGuests(guest, option, place[0], place[1], place[2]);
    }

    private int turnedOption(int guest, Option from, QuarterTurn turn) {
        Slot slot = state.problem().slot(guest);
        if (from.turn() == turn) {
            return state.optionNumber[guest];
        }
        for (int o = 0; o < slot.options().size(); o++) {
            Option option = slot.options().get(o);
            Option.Berth berth = option.berth();
            Option.Berth old = from.berth();
            if (option.turn() == turn
                    && berth != null
                    && old != null
                    && berth.slot() == old.slot()
                    && berth.number() == old.number()) {
                return o;
            }
        }
        return -1;
    }

    private void note(int slot) {
        slots.add(slot);
        before.add(state.spot(slot));
    }
}
