package org.shelterwright.solver.load.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;

/**
 * The order in which the pieces of a load are put in. It is the reverse of taking them out: a piece can come out when
 * nothing stands on it or between it and the end at the highest x. Of those that can, the earlier stop comes first, then
 * what is nearest to the end. If some pieces hold each other (each stands on or before the next, in a ring), they come
 * first, from the lowest up: they must be lifted in.
 */
final class Sequence {
    private Sequence() {}

    /** The same load in that order. */
    static Load of(LoadProblem problem, Load load) {
        List<Stowed> stowed = load.stowed();
        int n = stowed.size();
        int[] blockers = new int[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                blockers[i] +=
                        i != j && blocks(stowed.get(j).box(), stowed.get(i).box()) ? 1 : 0;
            }
        }
        PriorityQueue<Integer> free = new PriorityQueue<>(Comparator.<Integer>comparingInt(
                        i -> problem.kinds().get(stowed.get(i).kind()).stop())
                .thenComparingInt(i -> -stowed.get(i).box().x1())
                .thenComparingInt(i -> -stowed.get(i).box().z0())
                .thenComparingInt(i -> stowed.get(i).box().y0())
                .thenComparingInt(i -> i));
        for (int i = 0; i < n; i++) {
            if (blockers[i] == 0) {
                free.add(i);
            }
        }
        List<Stowed> out = new ArrayList<>();
        boolean[] gone = new boolean[n];
        for (Integer next = free.poll(); next != null; next = free.poll()) {
            int taken = next;
            gone[taken] = true;
            out.add(stowed.get(taken));
            for (int i = 0; i < n; i++) {
                if (!gone[i] && blocks(stowed.get(taken).box(), stowed.get(i).box()) && --blockers[i] == 0) {
                    free.add(i);
                }
            }
        }
        Integer[] stuck = new Integer[n];
        Arrays.setAll(stuck, i -> i);
        Arrays.stream(stuck)
                .filter(i -> !gone[i])
                .sorted(Comparator.comparingInt(i -> -stowed.get(i).box().z0()))
                .forEach(i -> out.add(stowed.get(i)));
        Collections.reverse(out);
        return new Load(out);
    }

    private static boolean blocks(Box other, Box one) {
        return other.y0() < one.y1()
                && one.y0() < other.y1()
                && ((other.x0() < one.x1() && one.x0() < other.x1() && other.z0() >= one.z1())
                        || (other.z0() < one.z1() && one.z0() < other.z1() && other.x0() >= one.x1()));
    }
}
