package org.shelterwright.solver.fit.kernel;

import java.util.Arrays;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.solver.fit.model.AccessRules;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Shape;
import org.shelterwright.solver.fit.model.Slot;

/**
 * A state as people on the floor meet it, on station, seen from above: what stands in their way and where they go. In arrays that are
 * reused. Not for several threads.
 */
final class FloorView {
    private final State state;
    private final FitProblem problem;
    private final AccessRules rules;
    private final boolean[] there;
    private final boolean[] pushedAside;
    private int[] obstacles = new int[256];
    private int obstacleEnd;
    private int closedEnd;
    private int[] targets = new int[64];
    private int targetEnd;
    private int[] seats = new int[16];
    private int seatEnd;

    FloorView(State state) {
        this.state = state;
        this.problem = state.problem();
        this.rules = problem.access();
        this.there = new boolean[problem.size()];
        this.pushedAside = new boolean[problem.size()];
        for (Slot slot : problem.slots()) {
            there[slot.index()] = slot.onStation();
            pushedAside[slot.index()] = slot.pushedAside();
        }
    }

    /** x0, y0, x1, y1 of each obstacle (µm): those that are always there first, then drawers and flaps out. */
    int[] obstacles() {
        return obstacles;
    }

    /** How many obstacles there are with everything closed. */
    int closed() {
        return closedEnd / 4;
    }

    /** How many obstacles there are with every drawer and flap out. */
    int opened() {
        return obstacleEnd / 4;
    }

    /** x0, y0, x1, y1 of each place that people go to. */
    int[] targets() {
        return targets;
    }

    int targetEnd() {
        return targetEnd;
    }

    /** The places among the targets at which people sit. */
    int[] seats() {
        return seats;
    }

    int seatEnd() {
        return seatEnd;
    }

    /** Takes the state as it is. */
    void take() {
        obstacleEnd = 0;
        targetEnd = 0;
        seatEnd = 0;
        int[] body = problem.bodyTerms().solids();
        addObstacles(body, 0, 0, 0);
        for (int s = 0; s < there.length; s++) {
            if (there[s] && state.placed[s]) {
                Option option = state.seenOption(s);
                if (!pushedAside[s]) {
                    addObstacles(option.station().solids(), state.seenX(s), state.seenY(s), state.seenZ(s));
                }
                addTargets(option.station(), state.seenX(s), state.seenY(s), state.seenZ(s));
            }
        }
        closedEnd = obstacleEnd;
        for (int s = 0; s < there.length; s++) {
            if (there[s] && state.placed[s]) {
                addObstacles(state.seenOption(s).drawers(), state.seenX(s), state.seenY(s), state.seenZ(s));
            }
        }
    }

    private void addObstacles(int[] boxes, int x, int y, int z) {
        for (int i = 0; i < boxes.length; i += 6) {
            if (z + boxes[i + 2] < rules.headroom() && z + boxes[i + 5] > rules.step()) {
                obstacles = with(obstacles, obstacleEnd, boxes, i, x, y);
                obstacleEnd += 4;
            }
        }
    }

    private void addTargets(Shape shape, int x, int y, int z) {
        int[] zones = shape.zones();
        for (int k = 0; k < shape.purposes().length; k++) {
            Purpose purpose = shape.purposes()[k];
            int i = 6 * k;
            boolean seat = purpose == Purpose.SEAT;
            boolean onFloor = z + zones[i + 2] <= rules.step() && z + zones[i + 5] > rules.step();
            if ((seat || purpose == Purpose.SERVICE && onFloor) && inRoom(zones, i, x, y)) {
                targets = with(targets, targetEnd, zones, i, x, y);
                targetEnd += 4;
                if (seat) {
                    seats = with(seats, seatEnd, zones, i, x, y);
                    seatEnd += 4;
                }
            }
        }
    }

    private boolean inRoom(int[] zones, int i, int x, int y) {
        return x + zones[i] < problem.inside().x()
                && x + zones[i + 3] > 0
                && y + zones[i + 1] < problem.inside().y()
                && y + zones[i + 4] > 0;
    }

    private static int[] with(int[] list, int count, int[] boxes, int i, int x, int y) {
        int[] room = count + 4 > list.length ? Arrays.copyOf(list, 2 * list.length) : list;
        room[count] = x + boxes[i];
        room[count + 1] = y + boxes[i + 1];
        room[count + 2] = x + boxes[i + 3];
        room[count + 3] = y + boxes[i + 4];
        return room;
    }
}
