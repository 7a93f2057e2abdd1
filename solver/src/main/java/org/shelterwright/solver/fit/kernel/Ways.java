package org.shelterwright.solver.fit.kernel;

import java.util.Arrays;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.layouts.ledger.access.WalkwayQuery;
import org.shelterwright.solver.fit.model.AccessRules;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Shape;
import org.shelterwright.solver.fit.model.Slot;

/**
 * Walks the floor of a state: what lacks in the width of the ways to work places and service zones (medium), and of the
 * ways out (hard). Exact at the full width; what lacks is told in eighths of it. Not for several threads.
 */
final class Ways {
    private static final int STEPS = 8;

    private final State state;
    private final FitProblem problem;
    private final AccessRules rules;
    private final WalkwayQuery query = new WalkwayQuery();
    private final boolean anySeat;
    private final boolean anyDrawer;
    private int[] obstacles = new int[256];
    private int[] targets = new int[64];
    private int[] seats = new int[16];
    private int obstacleCount;
    private int targetCount;
    private int seatCount;
    private long hard;
    private long medium;

    Ways(State state) {
        this.state = state;
        this.problem = state.problem();
        this.rules = problem.access();
        this.anyDrawer = problem.slots().stream()
                .flatMap(slot -> slot.options().stream())
                .anyMatch(option -> option.drawers().length > 0);
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
     * Walks the present state. Cost: some 0.1 ms for 60 units, more where ways lack.
     *
     * @param weights what a millimetre costs
     * @param allowed the amounts are of interest only up to this cost (mm)
     * @return false as soon as they cost more; they are then not complete
     */
    boolean walk(Weights weights, double allowed) {
        hard = 0;
        medium = 0;
        gather(false);
        if (rules.walkway() > 0) {
            int[] places = Arrays.copyOf(targets, targetCount);
            double each = weights.cost(0, rules.walkway() / STEPS, 0);
            long[] lacking = lacking(rules.walkway(), rules.doors(), places, allowed / each);
            medium = Arrays.stream(lacking).sum();
            if (weights.cost(0, medium, 0) > allowed) {
                return false;
            }
        }
        if (rules.exitWidth() > 0 && seatCount > 0) {
            if (anyDrawer) {
                gather(true);
            }
            int[] places = Arrays.copyOf(seats, seatCount);
            if (seatCount > 4 && rules.exitCount() > 1 && rules.exits().length > 0) {
                severalExits(places);
            } else {
                hard = Arrays.stream(lacking(rules.exitWidth(), starts(), places, Double.MAX_VALUE))
                        .sum();
            }
        }
        return weights.cost(hard, medium, 0) <= allowed;
    }

    /**
     * What lacks in the width of the way to each place, in eighths of the width, found by halving.
     *
     * @param most if more places than this are not reached at full width, the rest is not looked at
     */
    private long[] lacking(int width, int[] doors, int[] places, double most) {
        int count = places.length / 4;
        long[] lacking = new long[count];
        int[] reachedAt = new int[count];
        int[] missedAt = new int[count];
        boolean[] full = reached(width, doors, places);
        int missed = 0;
        for (int i = 0; i < count; i++) {
            reachedAt[i] = full[i] ? STEPS : 0;
            missedAt[i] = full[i] ? STEPS + 1 : STEPS;
            missed += full[i] ? 0 : 1;
        }
        int step = missed == 0 || missed > most ? 0 : STEPS / 2;
        while (step > 0) {
            boolean[] reached = reached((int) ((long) width * step / STEPS), doors, places);
            int next = 0;
            for (int i = 0; i < count; i++) {
                if (reached[i]) {
                    reachedAt[i] = Math.max(reachedAt[i], step);
                } else {
                    missedAt[i] = Math.min(missedAt[i], step);
                }
                if (missedAt[i] - reachedAt[i] > 1) {
                    next = (missedAt[i] + reachedAt[i]) / 2;
                }
            }
            step = next;
        }
        for (int i = 0; i < count; i++) {
            lacking[i] = width - (int) ((long) width * reachedAt[i] / STEPS);
        }
        return lacking;
    }

    /**
     * The way out of each work place to its nearest exit, and what lacks to the nearest exits of the work place that lacks
     * most. A hatch is reached by who is reached from where it is reached.
     */
    private void severalExits(int[] places) {
        int exits = rules.exits().length / 4;
        int hatches = rules.hatches().length / 4;
        int seatsHere = places.length / 4;
        long[][] ofSeat = new long[seatsHere][exits + hatches];
        for (int e = 0; e < exits; e++) {
            int[] exit = Arrays.copyOfRange(rules.exits(), 4 * e, 4 * e + 4);
            long[] lacking = lacking(rules.exitWidth(), exit, places, Double.MAX_VALUE);
            for (int s = 0; s < seatsHere; s++) {
                ofSeat[s][e] = lacking[s];
            }
        }
        if (hatches > 0) {
            int[] both = Arrays.copyOf(places, places.length + rules.hatches().length);
            System.arraycopy(rules.hatches(), 0, both, places.length, rules.hatches().length);
            boolean[] reached = reached(rules.exitWidth(), starts(), both);
            for (int h = 0; h < hatches; h++) {
                for (int s = 0; s < seatsHere; s++) {
                    ofSeat[s][exits + h] = reached[s] && reached[seatsHere + h] ? 0 : rules.exitWidth();
                }
            }
        }
        long most = 0;
        for (long[] lacking : ofSeat) {
            Arrays.sort(lacking);
            hard += lacking[0];
            long sum = 0;
            for (int i = 0; i < rules.exitCount(); i++) {
                sum += i < lacking.length ? lacking[i] : rules.exitWidth();
            }
            most = Math.max(most, sum);
        }
        hard += most;
    }

    private int[] starts() {
        return rules.exits().length > 0 ? rules.exits() : rules.doors();
    }

    private boolean[] reached(int width, int[] doors, int[] places) {
        return query.reached(
                problem.inside().x(), problem.inside().y(), width, obstacles, obstacleCount / 4, doors, places);
    }

    private void gather(boolean drawersOut) {
        obstacleCount = 0;
        targetCount = 0;
        seatCount = 0;
        int[] body = problem.bodyTerms().solids();
        for (int i = 0; i < body.length; i += 6) {
            addObstacle(body, i, 0, 0, 0);
        }
        for (Slot slot : problem.slots()) {
            int s = slot.index();
            if (slot.onStation() && state.placed[s]) {
                Option option = state.option[s];
                if (!slot.pushedAside()) {
                    addObstacles(option.station().solids(), s);
                }
                if (drawersOut) {
                    addObstacles(option.drawers(), s);
                }
                addTargets(option.station(), s);
            }
        }
    }

    private void addObstacles(int[] solids, int s) {
        for (int i = 0; i < solids.length; i += 6) {
            addObstacle(solids, i, state.x[s], state.y[s], state.z[s]);
        }
    }

    private void addObstacle(int[] boxes, int i, int x, int y, int z) {
        if (z + boxes[i + 2] < rules.headroom() && z + boxes[i + 5] > rules.step()) {
            if (obstacleCount + 4 > obstacles.length) {
                obstacles = Arrays.copyOf(obstacles, 2 * obstacles.length);
            }
            obstacles[obstacleCount++] = x + boxes[i];
            obstacles[obstacleCount++] = y + boxes[i + 1];
            obstacles[obstacleCount++] = x + boxes[i + 3];
            obstacles[obstacleCount++] = y + boxes[i + 4];
        }
    }

    private void addTargets(Shape shape, int s) {
        int[] zones = shape.zones();
        for (int k = 0; k < shape.purposes().length; k++) {
            int i = 6 * k;
            int x0 = state.x[s] + zones[i];
            int y0 = state.y[s] + zones[i + 1];
            int x1 = state.x[s] + zones[i + 3];
            int y1 = state.y[s] + zones[i + 4];
            boolean onFloor = state.z[s] + zones[i + 2] <= rules.step() && state.z[s] + zones[i + 5] > rules.step();
            boolean inRoom =
                    x0 < problem.inside().x() && x1 > 0 && y0 < problem.inside().y() && y1 > 0;
            boolean seat = shape.purposes()[k] == Purpose.SEAT;
            if (inRoom && (seat || shape.purposes()[k] == Purpose.SERVICE && onFloor)) {
                targets = with(targets, targetCount, x0, y0, x1, y1);
                targetCount += 4;
                if (seat) {
                    seats = with(seats, seatCount, x0, y0, x1, y1);
                    seatCount += 4;
                }
            }
        }
    }

    private static int[] with(int[] list, int count, int x0, int y0, int x1, int y1) {
        int[] room = count + 4 > list.length ? Arrays.copyOf(list, 2 * list.length) : list;
        room[count] = x0;
        room[count + 1] = y0;
        room[count + 2] = x1;
        room[count + 3] = y1;
        return room;
    }
}
