package org.shelterwright.solver.load.beam;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shelterwright.solver.load.packing.Chooser;
import org.shelterwright.solver.load.packing.Greedy;
import org.shelterwright.solver.load.packing.Packing;
import org.shelterwright.solver.load.packing.Scoring;

/**
 * Beam search. On each level there are up to w loads; each is carried on with its best blocks, each of these is completed
 * greedily, and the w that end best are the next level (after Araya and Riff, A beam search approach to the container
 * loading problem, Computers and Operations Research 43 (2014); from memory). Not for several threads.
 */
public final class Beam {
    private final Chooser chooser;
    private final Greedy greedy;
    private final Packing trial;
    private List<Packing> level = new ArrayList<>();
    private List<Packing> nextLevel = new ArrayList<>();
    private int n;
    private int children;
    private int[] parent = new int[64];
    private int[] space = new int[64];
    private int[] block = new int[64];
    private double[] worth = new double[64];
    private double[] placed = new double[64];

    public Beam(Chooser chooser, Packing like) {
        this.chooser = chooser;
        this.greedy = new Greedy(chooser);
        this.trial = new Packing(like.table());
    }

    /**
     * Searches from a packing on, whose spaces it may change.
     *
     * @param width how many loads a level keeps
     * @param best takes over what is found, if it is worth more
     */
    public void run(Packing start, int width, Scoring scoring, Effort effort, Trace best) {
        slot(level, 0, start).copy(start);
        n = 1;
        boolean first = true;
        int most = Math.max(2, start.table().size());
        while (n > 0 && !effort.over()) {
            children = 0;
            int each = (int) Math.min(most, Math.max(1, Math.round((double) width * width / n)));
            for (int i = 0; i < n && !effort.over(); i++) {
                expand(level.get(i), i, first ? Math.max(2, each) : each, scoring, effort, best);
            }
            first = false;
            select(width, start);
        }
    }

    /** Completes a packing greedily and tells what it is worth. */
    public double complete(Packing packing, Scoring scoring) {
        chooser.refresh(packing);
        return greedy.complete(packing, scoring);
    }

    private void expand(Packing from, int number, int most, Scoring scoring, Effort effort, Trace best) {
        chooser.refresh(from);
        while (true) {
            int s = from.spaces().next();
            if (s < 0) {
                if (chooser.rule().goOn(from)) {
                    continue;
                }
                break;
            }
            if (chooser.best(from, s, scoring, most) == 0) {
                from.spaces().kill(s);
                continue;
            }
            for (int b : chooser.found()) {
                trial.copy(from);
                trial.put(b, s);
                double volume = trial.value();
                long before = greedy.steps();
                double value = greedy.complete(trial, scoring);
                effort.spend(greedy.steps() - before + 1);
                if (value > best.worth()) {
                    best.take(trial, value);
                    effort.reached(value);
                }
                child(number, s, b, value, volume);
                if (effort.over()) {
                    return;
                }
            }
            return;
        }
        if (from.size() == 0 || n == 1) {
            double value = chooser.rule().worth(from);
            effort.spend(1);
            if (value > best.worth()) {
                best.take(from, value);
                effort.reached(value);
            }
        }
    }

    private void child(int of, int s, int b, double value, double volume) {
        if (children == parent.length) {
            parent = Arrays.copyOf(parent, 2 * children);
            space = Arrays.copyOf(space, 2 * children);
            block = Arrays.copyOf(block, 2 * children);
            worth = Arrays.copyOf(worth, 2 * children);
            placed = Arrays.copyOf(placed, 2 * children);
        }
        parent[children] = of;
        space[children] = s;
        block[children] = b;
        worth[children] = value;
        placed[children] = volume;
        children++;
    }

    /** Makes the next level of the best children; of those with equal end and equal volume so far, the first. */
    private void select(int width, Packing like) {
        Integer[] order = new Integer[children];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> {
            int byWorth = Double.compare(worth[b], worth[a]);
            int byPlaced = byWorth != 0 ? byWorth : Double.compare(placed[b], placed[a]);
            return byPlaced != 0 ? byPlaced : Integer.compare(a, b);
        });
        int kept = 0;
        for (int i = 0; i < children && kept < width; i++) {
            int c = order[i];
            int before = i == 0 ? -1 : order[i - 1];
            if (before < 0 || worth[before] != worth[c] || placed[before] != placed[c]) {
                Packing next = slot(nextLevel, kept++, like);
                next.copy(level.get(parent[c]));
                next.put(block[c], space[c]);
            }
        }
        List<Packing> old = level;
        level = nextLevel;
        nextLevel = old;
        n = kept;
    }

    private static Packing slot(List<Packing> of, int i, Packing like) {
        if (of.size() == i) {
            of.add(new Packing(like.table()));
        }
        return of.get(i);
    }
}
