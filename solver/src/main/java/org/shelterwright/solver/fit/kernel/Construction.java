package org.shelterwright.solver.fit.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.places.AnchorSet;

/** Greedy construction: the hardest to place first, each at the cheapest of its edge-aligned anchors. */
public final class Construction {
    /** More candidates than this an option are thinned by chance. */
    private static final int MOST = 2_000;

    private static final int CANDIDATES_A_MOVE = 16;

    private final State state;
    private final FitProblem problem;
    private final Dice dice;
    private final Grounds grounds;
    private final int[] place = new int[3];
    private double best;
    private @Nullable Spot bestSpot;
    private long tried;

    public Construction(State state, Dice dice) {
        this.state = state;
        this.problem = state.problem();
        this.dice = dice;
        this.grounds = new Grounds(state);
    }

    /**
     * Places every slot that has none and can have one. Cost: candidates times units, about 0.1 s for 60 units.
     *
     * @param noise from 0 (strictly the hardest first) up: how far chance changes the order
     * @return work done, in moves
     */
    public long placeAll(double noise) {
        List<Slot> waiting = new ArrayList<>();
        double[] rank = new double[problem.size()];
        for (Slot slot : problem.slots()) {
            if (!state.placed[slot.index()] && !slot.options().isEmpty()) {
                waiting.add(slot);
                rank[slot.index()] = hardness(slot) * (1 + noise * dice.share());
            }
        }
        waiting.sort(Comparator.comparing(Slot::movable)
                .thenComparing(Construction::hostedOnly)
                .thenComparing(slot -> -rank[slot.index()])
                .thenComparing(Slot::index));
        for (int pass = 0; pass < 3; pass++) {
            waiting.removeIf(slot -> placeOne(slot.index()));
        }
        return takeTried();
    }

    /** Work done since the last call, in moves: most candidates are turned down early and cost far less than a move. */
    long takeTried() {
        long count = tried / CANDIDATES_A_MOVE;
        tried = 0;
        return count;
    }

    /** Puts a slot at its cheapest candidate; false if it has none now. */
    boolean placeOne(int slot) {
        best = Double.POSITIVE_INFINITY;
        bestSpot = null;
        List<Option> options = problem.slot(slot).options();
        for (int o = 0; o < options.size(); o++) {
            if (grounds.open(slot, options.get(o))) {
                candidates(slot, o, options.get(o));
            }
        }
        Spot found = bestSpot;
        if (found == null) {
            return false;
        }
        state.put(slot, found);
        return true;
    }

    private void candidates(int slot, int number, Option option) {
        AnchorSet anchors = grounds.anchors(option);
        int points = anchors.points();
        int step = Math.max(1, points / MOST);
        for (int i = step == 1 ? 0 : dice.below(step); i < points; i += step) {
            anchors.point(i, place);
            grounds.shiftToBody(option, place);
            consider(slot, number, option);
        }
        for (Box area : anchors.areas()) {
            int[] us = edges(slot, option, area, anchors.across() == Axis.X ? Axis.Y : Axis.X);
            int[] vs = edges(slot, option, area, anchors.across() == Axis.Z ? Axis.Y : Axis.Z);
            long all = (long) us.length * vs.length;
            long count = Math.min(all, MOST);
            for (long k = 0; k < count; k++) {
                long pick = all <= MOST ? k : (long) (dice.share() * all);
                place[0] = area.x0();
                place[1] = area.y0();
                place[2] = area.z0();
                place[anchors.across() == Axis.X ? 1 : 0] = us[(int) (pick % us.length)];
                place[anchors.across() == Axis.Z ? 1 : 2] = vs[(int) (pick / us.length)];
                grounds.shiftToBody(option, place);
                consider(slot, number, option);
            }
        }
    }

    private void consider(int slot, int number, Option option) {
        tried++;
        double liking = liking(option);
        double cost = state.probe(slot, number, place[0], place[1], place[2], best - liking) + liking;
        if (cost < best) {
            best = cost;
            bestSpot = new Spot(number, place[0], place[1], place[2]);
        }
    }

    /** Near walls and corners first, the middle stays free; in mm, too little to pay for a broken limit. */
    private double liking(Option option) {
        Size size = option.size();
        Size inside = problem.inside();
        int x = Math.min(place[0], inside.x() - size.x() - place[0]);
        int y = Math.min(place[1], inside.y() - size.y() - place[1]);
        return 2e-5 * x + 1e-4 * y + dice.share();
    }

    /** Coordinates at which it touches an end of the area, another unit or a zone (in the frame of the area). */
    private int[] edges(int slot, Option option, Box area, Axis axis) {
        int a = axis.ordinal();
        int[] origin = new int[3];
        grounds.shiftToBody(option, origin);
        List<Integer> found = new ArrayList<>();
        int low = area.low(axis);
        int high = area.high(axis);
        found.add(low);
        found.add(high);
        int length = option.size().along(axis);
        for (int j = 0; j < state.placed.length; j++) {
            if (j != slot && state.placed[j]) {
                int at = (a == 0 ? state.x[j] : a == 1 ? state.y[j] : state.z[j]) - origin[a];
                int[] reach = state.option[j].shape(Situation.ON_STATION).reach();
                int end = at + state.option[j].size().along(axis);
                for (int face : new int[] {at, end, at + reach[a], at + reach[a + 3]}) {
                    found.add(face);
                    found.add(face - length);
                }
            }
        }
        return found.stream()
                .mapToInt(Integer::intValue)
                .filter(value -> value >= low && value <= high)
                .sorted()
                .distinct()
                .toArray();
    }

    private static boolean hostedOnly(Slot slot) {
        return slot.options().stream().allMatch(option -> option.berth() != null);
    }

    private static double hardness(Slot slot) {
        Option first = slot.options().get(0);
        int[] reach = first.shape(slot.onStation() ? Situation.ON_STATION : Situation.ON_THE_ROAD)
                .reach();
        double volume = first.size().volumeM3();
        double needed = 1e-18 * (reach[3] - reach[0]) * (reach[4] - reach[1]) * (reach[5] - reach[2]);
        return volume + 0.5 * needed;
    }
}
