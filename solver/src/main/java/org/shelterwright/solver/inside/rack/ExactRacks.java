package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * Arranges pieces in bays exactly: the table of each bay, then the best split of the pieces between them, bay after bay. Pieces of
 * one kind are not told apart. Cost: the choices for one bay, the splits of all choices for each further one.
 */
final class ExactRacks {
    private static final int MOST_TO_SPLIT = 8_000;

    private final RackProblem problem;
    private final Choices choices;
    private final List<RackPiece> samples;

    private ExactRacks(RackProblem problem, Choices choices, List<RackPiece> samples) {
        this.problem = problem;
        this.choices = choices;
        this.samples = samples;
    }

    /** The solver of a problem; empty if it is too large to be solved exactly. */
    static Optional<ExactRacks> of(RackProblem problem) {
        Map<Integer, RackPiece> byKind = new LinkedHashMap<>();
        problem.pieces().forEach(piece -> byKind.putIfAbsent(piece.kind(), piece));
        List<RackPiece> samples = new ArrayList<>();
        for (int kind = 0; kind < byKind.size(); kind++) {
            RackPiece sample = byKind.get(kind);
            if (sample != null) {
                samples.add(sample);
            }
        }
        Choices choices = Choices.of(problem.pieces(), samples.size());
        boolean few = choices.size() > 0 && (problem.bays().size() == 1 || choices.size() <= MOST_TO_SPLIT);
        return few ? Optional.of(new ExactRacks(problem, choices, samples)) : Optional.empty();
    }

    /** The seats of the pieces, in their order. */
    List<Seat> seats() {
        int size = choices.size();
        int bays = problem.bays().size();
        List<BayTable> tables = new ArrayList<>();
        long[] total = new long[size];
        int[][] part = new int[bays][size];
        for (int b = 0; b < bays; b++) {
            BayTable table = new BayTable(problem, choices, samples, b);
            tables.add(table);
            long[] own = new long[size];
            for (int choice = 0; choice < size; choice++) {
                long least = table.least(choice);
                own[choice] = least >= RackCost.NEVER
                        ? RackCost.NEVER
                        : least + problem.bays().get(b).overload(grams(choice));
            }
            total = b == 0 ? first(own, part[0]) : split(total, own, part[b]);
        }
        int best = 0;
        long least = Long.MAX_VALUE;
        for (int choice = 0; choice < size; choice++) {
            long cost = total[choice] >= RackCost.NEVER
                    ? RackCost.NEVER
                    : total[choice] + RackCost.LEFT_OUT * (problem.pieces().size() - count(choice));
            if (cost < least) {
                least = cost;
                best = choice;
            }
        }
        return seats(tables, part, best);
    }

    private static long[] first(long[] own, int[] part) {
        for (int choice = 0; choice < own.length; choice++) {
            part[choice] = choice;
        }
        return own;
    }

    private long[] split(long[] before, long[] own, int[] part) {
        long[] after = new long[own.length];
        Arrays.fill(after, RackCost.NEVER);
        for (int here = 0; here < own.length; here++) {
            if (own[here] < RackCost.NEVER) {
                for (int all = here; all < own.length; all++) {
                    if (choices.within(here, all)
                            && before[all - here] < RackCost.NEVER
                            && before[all - here] + own[here] < after[all]) {
                        after[all] = before[all - here] + own[here];
                        part[all] = here;
                    }
                }
            }
        }
        return after;
    }

    private List<Seat> seats(List<BayTable> tables, int[][] part, int best) {
        List<List<Seat>> byKind = new ArrayList<>();
        samples.forEach(sample -> byKind.add(new ArrayList<>()));
        int left = best;
        for (int b = tables.size() - 1; b >= 0; b--) {
            int here = part[b][left];
            for (int[] one : tables.get(b).arrangement(here)) {
                byKind.get(one[0]).add(new Seat(b, one[1]));
            }
            left -= here;
        }
        List<Seat> seats = new ArrayList<>();
        int[] used = new int[samples.size()];
        for (RackPiece piece : problem.pieces()) {
            List<Seat> own = byKind.get(piece.kind());
            int number = used[piece.kind()]++;
            seats.add(number < own.size() ? own.get(own.size() - 1 - number) : Seat.NONE);
        }
        return seats;
    }

    private long grams(int choice) {
        long grams = 0;
        for (int k = 0; k < samples.size(); k++) {
            grams += samples.get(k).grams() * choices.held(choice, k);
        }
        return grams;
    }

    private int count(int choice) {
        int count = 0;
        for (int k = 0; k < samples.size(); k++) {
            count += choices.held(choice, k);
        }
        return count;
    }
}
