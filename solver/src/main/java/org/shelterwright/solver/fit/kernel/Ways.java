package org.shelterwright.solver.fit.kernel;

import java.util.Arrays;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.layouts.ledger.access.WayWidths;
import org.shelterwright.solver.fit.model.AccessRules;
import org.shelterwright.solver.fit.model.FitProblem;

/**
 * Walks the floor of a state: what lacks in the width of the ways to work places and service zones (medium), and of the
 * ways out (hard). Exact at the full width; what lacks is told in eighths of it. A floor that is as it was last time is not walked
 * again. Not for several threads.
 */
final class Ways {
    private static final int STEPS = 8;

    private final AccessRules rules;
    private final FloorView view;
    private final WayWidths inside;
    private final WayWidths out;
    private final boolean anySeat;
    private int[] targetsBefore = {};
    private int[] seatsBefore = {};
    private long[] ofExits = {};
    private int missed;
    private long hard;
    private long medium;
    private long lastHard;
    private long lastMedium;

    Ways(State state) {
        FitProblem problem = state.problem();
        this.rules = problem.access();
        this.view = new FloorView(state);
        int x = problem.inside().x();
        int y = problem.inside().y();
        this.inside = new WayWidths(x, y, Math.max(1, rules.walkway() / STEPS));
        this.out = new WayWidths(x, y, Math.max(1, rules.exitWidth() / STEPS));
        this.anySeat = problem.slots().stream()
                .flatMap(slot -> slot.options().stream())
                .anyMatch(option -> Arrays.asList(option.station().purposes()).contains(Purpose.SEAT));
    }

    /** Whether the rules ask for any way. */
    boolean asked() {
        return rules.walkway() > 0 || (rules.exitWidth() > 0 && anySeat);
    }

    long hard() {
        return hard;
    }

    long medium() {
        return medium;
    }

    /**
     * Walks the present state. Cost: some 10 µs for 30 units.
     *
     * @param weights what a millimetre costs
     * @param allowed the amounts are of interest only up to this cost (mm)
     * @return false as soon as they cost more; they are then not complete
     */
    boolean walk(Weights weights, double allowed) {
        hard = 0;
        medium = 0;
        view.take();
        if (rules.walkway() > 0) {
            medium = walkIn();
            double each = weights.cost(0, rules.walkway() / STEPS, 0);
            if (missed > allowed / each || weights.cost(0, medium, 0) > allowed) {
                return false;
            }
        }
        if (rules.exitWidth() > 0 && view.seatEnd() > 0) {
            hard = walkOut();
        }
        return weights.cost(hard, medium, 0) <= allowed;
    }

    /** What lacks in the width of the ways to all targets; counts those that are not reached at the full width. */
    private long walkIn() {
        int end = view.targetEnd();
        boolean changed = inside.floor(view.obstacles(), view.closed());
        if (changed || !Arrays.equals(view.targets(), 0, end, targetsBefore, 0, targetsBefore.length)) {
            targetsBefore = Arrays.copyOf(view.targets(), end);
            inside.from(rules.doors(), 0, rules.doors().length);
            missed = 0;
            lastMedium = 0;
            for (int t = 0; t < end; t += 4) {
                int lacking = lacking(inside, view.targets(), t, rules.walkway());
                missed += lacking > 0 ? 1 : 0;
                lastMedium += lacking;
            }
        }
        return lastMedium;
    }

    /** What lacks in the width of the ways out of all work places. */
    private long walkOut() {
        int end = view.seatEnd();
        boolean changed = out.floor(view.obstacles(), view.opened());
        if (changed || !Arrays.equals(view.seats(), 0, end, seatsBefore, 0, seatsBefore.length)) {
            seatsBefore = Arrays.copyOf(view.seats(), end);
            if (end > 4 && rules.exitCount() > 1 && rules.exits().length > 0) {
                lastHard = severalExits(end);
            } else {
                lastHard = 0;
                out.from(starts(), 0, starts().length);
                for (int s = 0; s < end; s += 4) {
                    lastHard += lacking(out, view.seats(), s, rules.exitWidth());
                }
            }
        }
        return lastHard;
    }

    /** What lacks in the width of the widest way to a place, in eighths of the width asked for. */
    private static int lacking(WayWidths widths, int[] places, int at, int width) {
        int widest = widths.widest(places, at, width);
        int step = STEPS;
        while (step > 0 && (int) ((long) width * step / STEPS) > widest) {
            step--;
        }
        return width - (int) ((long) width * step / STEPS);
    }

    /**
     * The way out of each work place to its nearest exit, and what lacks to the nearest exits of the work place that lacks
     * most. A hatch is reached by who is reached from where it is reached.
     */
    private long severalExits(int end) {
        int exits = rules.exits().length / 4;
        int hatches = rules.hatches().length / 4;
        int ways = exits + hatches;
        int places = end / 4;
        if (ofExits.length < places * ways) {
            ofExits = new long[places * ways];
        }
        for (int e = 0; e < exits; e++) {
            out.from(rules.exits(), 4 * e, 4 * e + 4);
            for (int s = 0; s < places; s++) {
                ofExits[s * ways + e] = lacking(out, view.seats(), 4 * s, rules.exitWidth());
            }
        }
        if (hatches > 0) {
            out.from(starts(), 0, starts().length);
            for (int h = 0; h < hatches; h++) {
                boolean hatch = out.widest(rules.hatches(), 4 * h, rules.exitWidth()) >= rules.exitWidth();
                for (int s = 0; s < places; s++) {
                    boolean both = hatch && out.widest(view.seats(), 4 * s, rules.exitWidth()) >= rules.exitWidth();
                    ofExits[s * ways + exits + h] = both ? 0 : rules.exitWidth();
                }
            }
        }
        long sum = 0;
        long most = 0;
        for (int s = 0; s < places; s++) {
            Arrays.sort(ofExits, s * ways, (s + 1) * ways);
            sum += ofExits[s * ways];
            long nearest = 0;
            for (int i = 0; i < rules.exitCount(); i++) {
                nearest += i < ways ? ofExits[s * ways + i] : rules.exitWidth();
            }
            most = Math.max(most, nearest);
        }
        return sum + most;
    }

    private int[] starts() {
        return rules.exits().length > 0 ? rules.exits() : rules.doors();
    }
}
