package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/**
 * Makes an arrangement better by taking a few pieces out of one or two bays, with those that have no place, and seating them anew,
 * exactly, in what is free then: pieces beside each other, which shifts whole blocks; pieces that sit dearer than they could, with
 * neighbours; or any. It never makes an arrangement dearer, so it leaves out no piece that had a place. When nothing helps for long, some
 * pieces are thrown together anew and the best so far is kept. The same seed gives the same arrangement.
 */
final class Resettling {
    /** Moves of the local search before take one piece or two. */
    private static final int LEAST = 4;

    private static final int MOST = 9;

    /** Of two bays each choice for both is split in every way: fewer pieces take as long. */
    private static final int MOST_IN_TWO = 7;

    /** So many rounds a piece without gain, then a throw. */
    private static final int PATIENCE = 12;

    private static final int LEAST_THROWN = 2;
    private static final int MOST_THROWN = 6;

    /** Which of the streams of a seed is its own. */
    private static final int STREAM = 7;

    private final RackProblem problem;
    private final Dice dice;

    Resettling(RackProblem problem, long seed) {
        this.problem = problem;
        this.dice = Dice.of(seed, STREAM);
    }

    /** Rounds over an arrangement; gives one that costs no more. Cost of a round: that of an exact problem of a few pieces. */
    List<Seat> better(List<Seat> start, long rounds) {
        List<Seat> now = start;
        long cost = problem.cost(now);
        List<Seat> best = now;
        long least = cost;
        int idle = 0;
        int patience = PATIENCE * problem.pieces().size();
        for (long round = 0; round < rounds; round++) {
            List<Seat> next = settled(now, chosen(now));
            long found = problem.cost(next);
            idle = found < cost ? 0 : idle + 1;
            if (found <= cost) {
                now = next;
                cost = found;
            }
            if (cost < least) {
                least = cost;
                best = now;
            }
            if (idle > patience) {
                now = thrown(best);
                cost = problem.cost(now);
                idle = 0;
            }
        }
        return best;
    }

    /** Pieces to seat anew, at least one of them with a place if any has. */
    private Set<Integer> chosen(List<Seat> seats) {
        Set<Integer> chosen = new TreeSet<>();
        int bays = problem.bays().size();
        int bay = dice.below(bays);
        int second = bays > 1 && dice.below(2) == 0 ? (bay + 1 + dice.below(bays - 1)) % bays : bay;
        int most = LEAST + dice.below((second == bay ? MOST : MOST_IN_TWO) - LEAST + 1);
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            if (seats.get(i).bay() < 0) {
                out.add(i);
            }
        }
        for (int spare = 0; spare < 2 && !out.isEmpty(); spare++) {
            chosen.add(out.remove(dice.below(out.size())));
        }
        List<Integer> here = within(seats, bay);
        List<Integer> there = second == bay ? List.of() : within(seats, second);
        int half = there.isEmpty() ? most : (most + 1) / 2;
        switch (dice.below(4)) {
            case 0 -> any(here, half, chosen);
            case 1 -> {
                dearest(seats, here).ifPresent(chosen::add);
                any(here, half - 1, chosen);
            }
            default -> beside(here, half, chosen);
        }
        if (dice.below(2) == 0) {
            beside(there, most - half, chosen);
        } else {
            any(there, most - half, chosen);
        }
        return chosen;
    }

    /** The pieces in a bay, from below. */
    private static List<Integer> within(List<Seat> seats, int bay) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            if (seats.get(i).bay() == bay) {
                found.add(i);
            }
        }
        found.sort(Comparator.comparingInt(i -> seats.get(i).lowest()));
        return found;
    }

    private void any(List<Integer> from, int count, Set<Integer> chosen) {
        List<Integer> left = new ArrayList<>(from);
        for (int i = 0; i < count && !left.isEmpty(); i++) {
            chosen.add(left.remove(dice.below(left.size())));
        }
    }

    private void beside(List<Integer> from, int count, Set<Integer> chosen) {
        int begin = dice.below(Math.max(1, from.size() - count + 1));
        chosen.addAll(from.subList(Math.min(begin, from.size()), Math.min(from.size(), begin + count)));
    }

    /** The piece that sits dearest beyond its cheapest place, of three that are looked at. */
    private Optional<Integer> dearest(List<Seat> seats, List<Integer> from) {
        Set<Integer> some = new TreeSet<>();
        any(from, 3, some);
        return some.stream().max(Comparator.comparingLong(i -> {
            Seat seat = seats.get(i);
            RackPiece piece = problem.pieces().get(i);
            long least = RackCost.NEVER;
            for (int u = 1; u <= problem.bays().get(seat.bay()).units(); u++) {
                least = Math.min(least, problem.cost(piece, seat.bay(), u));
            }
            return problem.cost(piece, seat.bay(), seat.lowest()) - least;
        }));
    }

    /** Some pieces taken out and put back one by one, in a random order, each at its cheapest free place. */
    private List<Seat> thrown(List<Seat> seats) {
        List<Seat> next = new ArrayList<>(seats);
        Set<Integer> out = new TreeSet<>();
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            all.add(i);
        }
        any(all, LEAST_THROWN + dice.below(MOST_THROWN - LEAST_THROWN + 1), out);
        out.forEach(i -> next.set(i, Seat.NONE));
        List<Integer> order = new ArrayList<>(out);
        while (!order.isEmpty()) {
            int i = order.remove(dice.below(order.size()));
            next.set(i, RackSearch.cheapest(problem, problem.pieces().get(i), problem.taken(next)));
        }
        return next;
    }

    /** The arrangement with some pieces seated anew, at the least cost that there is while all others stay. */
    private List<Seat> settled(List<Seat> seats, Set<Integer> chosen) {
        List<Integer> bays = new ArrayList<>(new TreeSet<>(chosen.stream()
                .map(i -> seats.get(i).bay())
                .filter(bay -> bay >= 0)
                .toList()));
        if (bays.isEmpty()) {
            bays.add(dice.below(problem.bays().size()));
        }
        List<Seat> rest = new ArrayList<>(seats);
        chosen.forEach(i -> rest.set(i, Seat.NONE));
        RackProblem part = problem.part(rest, List.copyOf(chosen), bays);
        List<Seat> found = ExactRacks.of(part).map(ExactRacks::seats).orElse(List.of());
        int number = 0;
        for (int i : chosen) {
            Seat seat = number < found.size() ? found.get(number) : Seat.NONE;
            rest.set(i, seat.bay() < 0 ? Seat.NONE : new Seat(bays.get(seat.bay()), seat.lowest()));
            number++;
        }
        return List.copyOf(rest);
    }
}
