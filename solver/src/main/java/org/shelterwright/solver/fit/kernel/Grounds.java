package org.shelterwright.solver.fit.kernel;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.places.AnchorSet;

/** The anchors of options in the frame of the body, wherever their hosts stand just now. */
final class Grounds {
    private final State state;

    Grounds(State state) {
        this.state = state;
    }

    /** Whether the option can be taken now: on the body always, on a unit if that is placed and not carried by the slot. */
    boolean open(int slot, Option option) {
        Option.Berth berth = option.berth();
        int steps = 0;
        while (berth != null) {
            int host = berth.slot();
            if (host == slot || !state.placed[host] || steps++ > state.placed.length) {
                return false;
            }
            berth = state.option[host].berth();
        }
        return !anchors(option).isEmpty();
    }

    AnchorSet anchors(Option option) {
        Option.Berth berth = option.berth();
        return option.anchors(berth == null ? QuarterTurn.R0 : state.option[berth.slot()].turn());
    }

    /** Moves a place to the nearest anchor of an open option. */
    void nearest(Option option, int[] place) {
        shift(option, place, -1);
        anchors(option).nearest(place);
        shift(option, place, 1);
    }

    /** Takes any anchor of an open option; in an area, one on a grid of 50 mm where there is one. */
    void any(Option option, Dice dice, int[] place) {
        AnchorSet set = anchors(option);
        int points = set.points();
        int areas = set.areas().size();
        int pick = points == 0 ? points + dice.below(areas) : dice.below(points + areas);
        if (pick < points) {
            set.point(pick, place);
        } else {
            Box area = set.areas().get(pick - points);
            place[0] = within(area, Axis.X, dice);
            place[1] = within(area, Axis.Y, dice);
            place[2] = within(area, Axis.Z, dice);
        }
        shift(option, place, 1);
    }

    /** Brings a place from the frame of the anchors into that of the body. */
    void shiftToBody(Option option, int[] place) {
        shift(option, place, 1);
    }

    private static int within(Box area, Axis axis, Dice dice) {
        int value = area.low(axis) + dice.below(area.extent(axis) + 1);
        int round = Math.floorDiv(value + GRID / 2, GRID) * GRID;
        return Math.max(area.low(axis), Math.min(area.high(axis), round));
    }

    /** Round places that people like to find in a drawing (µm). */
    static final int GRID = 50_000;

    private void shift(Option option, int[] place, int sign) {
        Option.Berth berth = option.berth();
        if (berth != null) {
            place[0] += sign * state.x[berth.slot()];
            place[1] += sign * state.y[berth.slot()];
            place[2] += sign * state.z[berth.slot()];
        }
    }
}
