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
 * ways out (hard). Exact at the full width; what lacks is told in thirds of it. Not for several threads.
 */
final class Ways {
    private static final int STEPS = 3;

    private final State state;
    private final FitProblem problem;
    private final AccessRules rules;
    private final WalkwayQuery query = new WalkwayQuery();
    private final boolean anySeat;
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
        this.anySeat = problem.slots().stream()
                .flatMap(slot -> slot.options().stream())
                .anyMatch(option -> Arrays.asList(option.station().purposes()).contains(Purpose.SEAT));
    }

    /** Whether the rules ask for any way. */
    boolean asked() {
        return rules.walkway() > 0 || rules.exitWidth() > 0 && anySeat;
    }

    long hard() {
        return hard;
    }

    long medium() {
        return medium;
    }

    /** Walks the present state. Cost: some 0.1 ms for 60 units, more where ways lack. */
    void walk() {
        hard = 0;
        medium = 0;
        gather(false);
        if (rules.walkway() > 0) {
            medium = lacking(rules.walkway(), rules.doors(), Arrays.copyOf(targets, targetCount));
        }
        if (rules.exitWidth() > 0 && seatCount > 0) {
            gather(true);
            int[] places = Arrays.copyOf(seats, seatCount);
            hard = lacking(rules.exitWidth(), rules.exits(), places);
            if (seatCount > 4 && rules.exitCount() > 1) {
                hard += missingExits(places);
            }
        }
    }

    private long lacking(int width, int[] doors, int[] places) {
        long sum = 0;
        int[] left = places;
        for (int step = STEPS; step > 0 && left.length > 0; step--) {
            int tried = (int) ((long) width * step / STEPS);
            boolean[] reached = reached(tried, doors, left);
            int kept = 0;
            for (int i = 0; i < reached.length; i++) {
                if (reached[i]) {
                    sum += width - tried;
                } else {
                    System.arraycopy(left, 4 * i, left, 4 * kept++, 4);
                }
            }
            left = Arrays.copyOf(left, 4 * kept);
        }
        return sum + (long) width * (left.length / 4);
    }

    private long missingExits(int[] places) {
        int[] count = new int[places.length / 4];
        for (int i = 0; i < rules.exits().length; i += 4) {
            boolean[] reached = reached(rules.exitWidth(), Arrays.copyOfRange(rules.exits(), i, i + 4), places);
            for (int j = 0; j < count.length; j++) {
                count[j] += reached[j] ? 1 : 0;
            }
        }
        int least = Arrays.stream(count).min().orElse(rules.exitCount());
        return (long) Math.max(0, rules.exitCount() - least) * rules.exitWidth();
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
            if (shape.purposes()[k].reached() && onFloor && inRoom) {
                targets = with(targets, targetCount, x0, y0, x1, y1);
                targetCount += 4;
                if (shape.purposes()[k] == Purpose.SEAT) {
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
