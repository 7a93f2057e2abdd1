package org.shelterwright.solver.fit.kernel;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Shape;
import org.shelterwright.solver.fit.model.Slot;

/** Proposes places for one slot. Each proposal ends on an anchor, so pins and fixings are kept by construction. */
final class Proposals {
    private final FitProblem problem;
    private final State state;
    private final Dice dice;
    private final Grounds grounds;
    private final int[] place = new int[3];
    private final int[] mine = new int[6];
    private final int[] theirs = new int[6];
    private int option;

    Proposals(State state, Dice dice, Grounds grounds) {
        this.problem = state.problem();
        this.state = state;
        this.dice = dice;
        this.grounds = grounds;
    }

    /** Number of the proposed option. */
    int option() {
        return option;
    }

    int x() {
        return place[0];
    }

    int y() {
        return place[1];
    }

    int z() {
        return place[2];
    }

    /** Some way off along one or both axes, short ways more often; on a round grid where any place will do. */
    boolean shift(int slot) {
        stay(slot);
        double span = problem.inside().x() * Math.pow(0.002, dice.share());
        int axes = 1 + dice.below(3);
        if ((axes & 1) != 0) {
            place[0] += (int) ((2 * dice.share() - 1) * span);
        }
        if ((axes & 2) != 0) {
            place[1] += (int) ((2 * dice.share() - 1) * span);
        }
        if (grounds.anchors(state.option[slot]).across() != Axis.Z) {
            place[2] += (int) ((2 * dice.share() - 1) * span);
        }
        int grid = dice.below(4) == 0 ? 10_000 : Grounds.GRID;
        for (int axis = 0; axis < 3; axis++) {
            if (place[axis] != state.low(slot, axis)) {
                place[axis] = Math.floorDiv(place[axis] + grid / 2, grid) * grid;
            }
        }
        grounds.nearest(state.option[slot], place);
        return moved(slot);
    }

    /** Face to face, or flush, with another unit or one of its zones, or at a wall. */
    boolean snap(int slot) {
        stay(slot);
        Option its = state.option[slot];
        Axis axis = dice.below(2) == 0 ? Axis.X : Axis.Y;
        if (grounds.anchors(its).across() == axis) {
            axis = Axis.Z;
        }
        int other = dice.below(state.placed.length + 2);
        if (other >= state.placed.length) {
            int wall = problem.inside().along(axis) - its.size().along(axis);
            place[axis.ordinal()] = dice.below(2) == 0 ? 0 : wall;
        } else if (other == slot || !state.placed[other]) {
            return false;
        } else {
            beside(its, other, axis);
        }
        grounds.nearest(its, place);
        return moved(slot);
    }

    private void beside(Option its, int other, Axis axis) {
        part(its, mine);
        part(state.option[other], theirs);
        int a = axis.ordinal();
        int base = state.low(other, a);
        int pitch = grounds.anchors(its).pitch(axis);
        int way = Math.max(0, pitch / 2 - 1);
        switch (dice.below(3)) {
            case 0 -> place[a] = base + theirs[a + 3] - mine[a] + way;
            case 1 -> place[a] = base + theirs[a] - mine[a + 3] - way;
            default -> place[a] = dice.below(2) == 0 ? base + theirs[a] - mine[a] : base + theirs[a + 3] - mine[a + 3];
        }
        if (dice.below(3) == 0) {
            int b = axis == Axis.X ? 1 : 0;
            place[b] = dice.below(2) == 0
                    ? state.low(other, b)
                    : state.low(other, b) + size(state.option[other], b) - size(its, b);
        }
    }

    /** The size, or now and then one of the clear zones. */
    private void part(Option which, int[] box) {
        Shape shape = which.shape(dice.below(2) == 0 ? Situation.ON_STATION : Situation.ON_THE_ROAD);
        int zones = shape.purposes().length;
        if (zones > 0 && dice.below(3) == 0) {
            System.arraycopy(shape.zones(), 6 * dice.below(zones), box, 0, 6);
        } else {
            Size size = which.size();
            box[0] = 0;
            box[1] = 0;
            box[2] = 0;
            box[3] = size.x();
            box[4] = size.y();
            box[5] = size.z();
        }
    }

    /** Another turn or another thing to be mounted on, as near to the present middle as may be. */
    boolean remount(int slot) {
        Slot its = problem.slot(slot);
        int chosen = dice.below(its.options().size());
        return chosen != state.optionNumber[slot] && about(slot, chosen, slot);
    }

    /** Any anchor of any option. */
    boolean anywhere(int slot) {
        option = dice.below(problem.slot(slot).options().size());
        Option its = problem.slot(slot).options().get(option);
        if (!grounds.open(slot, its)) {
            return false;
        }
        grounds.any(its, dice, place);
        return true;
    }

    /** As far towards a wall as the sizes of the others leave free. */
    boolean slide(int slot) {
        stay(slot);
        Option its = state.option[slot];
        int a = dice.below(2);
        boolean up = dice.below(2) == 0;
        int limit = up ? problem.inside().along(Axis.values()[a]) - size(its, a) : 0;
        for (int j = 0; j < state.placed.length; j++) {
            if (j != slot && state.placed[j] && state.meet(slot, j) && state.abreast(slot, j, a)) {
                int low = state.low(j, a);
                int high = low + size(state.option[j], a);
                if (up && low >= place[a] + size(its, a)) {
                    limit = Math.min(limit, low - size(its, a));
                } else if (!up && high <= place[a]) {
                    limit = Math.max(limit, high);
                }
            }
        }
        place[a] = limit;
        grounds.nearest(its, place);
        return moved(slot);
    }

    /** About the middle of where another slot is now, mounted alike if it can be. */
    boolean inPlaceOf(int slot, int other) {
        return about(slot, alike(slot, other), other);
    }

    private int alike(int slot, int other) {
        Option model = state.option[other];
        Option own = state.option[slot];
        Slot its = problem.slot(slot);
        boolean keepTurn = own.surface() == model.surface() && own.berth() == null && dice.below(2) == 0;
        for (int o = 0; o < its.options().size(); o++) {
            Option candidate = its.options().get(o);
            if (candidate.surface() == model.surface()
                    && candidate.turn() == (keepTurn ? own.turn() : model.turn())
                    && sameBerth(candidate, model)) {
                return o;
            }
        }
        return state.optionNumber[slot];
    }

    private static boolean sameBerth(Option a, Option b) {
        Option.Berth one = a.berth();
        Option.Berth two = b.berth();
        return one == null ? two == null : two != null && one.slot() == two.slot() && one.number() == two.number();
    }

    private boolean about(int slot, int chosen, int other) {
        Option its = problem.slot(slot).options().get(chosen);
        if (!grounds.open(slot, its)) {
            return false;
        }
        option = chosen;
        for (int a = 0; a < 3; a++) {
            place[a] = state.low(other, a) + (size(state.option[other], a) - size(its, a)) / 2;
        }
        grounds.nearest(its, place);
        return true;
    }

    private void stay(int slot) {
        option = state.optionNumber[slot];
        place[0] = state.x[slot];
        place[1] = state.y[slot];
        place[2] = state.z[slot];
    }

    private boolean moved(int slot) {
        return place[0] != state.x[slot] || place[1] != state.y[slot] || place[2] != state.z[slot];
    }

    private static int size(Option option, int axis) {
        Size size = option.size();
        return axis == 0 ? size.x() : axis == 1 ? size.y() : size.z();
    }
}
