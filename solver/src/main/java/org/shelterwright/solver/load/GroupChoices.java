package org.shelterwright.solver.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;

/**
 * Which groups that go together or not at all are to go. A search that draws from all kinds at once leaves a little of every group
 * behind, and then loses all of them; one that is given only groups which can go as a whole does not. For falling shares of the room
 * the set of groups with the greatest volume up to there is tried: the first that goes in as a whole is taken.
 *
 * <p>Finding the set is a problem of subset sums: exact up to {@value #EXACT} groups, at a cost of 2 to their number; beyond, from the
 * greatest group down whatever still goes in, after which little is left open since the groups are many.
 */
final class GroupChoices {
    /** Shares of the room, from what mixed cargo hardly fills down. */
    private static final double[] SHARES = {0.95, 0.93, 0.91, 0.89, 0.87, 0.84, 0.8, 0.75};

    private static final int EXACT = 14;

    private GroupChoices() {}

    /**
     * A problem with some of the groups only, and all that belongs to none.
     *
     * @param kinds indices of its kinds in the whole problem
     * @param volume of the groups and of all else, but no more than the room takes
     */
    record Choice(LoadProblem problem, List<Integer> kinds, double volume) {
        Choice {
            kinds = List.copyOf(kinds);
        }

        /** A load of this problem as one of the whole problem. */
        Load whole(Load found) {
            return new Load(found.stowed().stream()
                    .map(one -> new Stowed(kinds.get(one.kind()), one.box()))
                    .toList());
        }

        /** Whether every group of this choice went in. */
        boolean complete(Load found) {
            int[] in = new int[problem.kinds().size()];
            found.stowed().forEach(one -> in[one.kind()]++);
            for (int k = 0; k < in.length; k++) {
                CargoKind kind = problem.kinds().get(k);
                if (kind.together() != null && in[k] < kind.count()) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Whether any kind belongs to a group. */
    static boolean asked(LoadProblem problem) {
        return problem.kinds().stream().anyMatch(kind -> kind.together() != null);
    }

    /** How many choices there are at most. */
    static int most() {
        return SHARES.length;
    }

    /** The choices that could hold more than a volume, the greatest first. */
    static List<Choice> of(LoadProblem problem, double above) {
        Map<String, Double> volumes = new LinkedHashMap<>();
        double free = 0;
        for (CargoKind kind : problem.kinds()) {
            double volume = kind.count() * kind.volume();
            if (kind.together() == null) {
                free += volume;
            } else {
                volumes.merge(kind.together(), volume, Double::sum);
            }
        }
        List<Map.Entry<String, Double>> groups = volumes.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, Double> one) -> -one.getValue())
                        .thenComparing(Map.Entry::getKey))
                .toList();
        Set<Set<String>> tried = new HashSet<>();
        List<Choice> choices = new ArrayList<>();
        for (double share : SHARES) {
            double room = share * problem.roomVolume();
            Set<String> names = groups.size() <= EXACT ? fullest(groups, room) : greedy(groups, room);
            double grouped = names.stream()
                    .mapToDouble(name -> volumes.getOrDefault(name, 0.0))
                    .sum();
            double volume = Math.min(room, grouped + free);
            if (volume > above && !names.isEmpty() && tried.add(names)) {
                choices.add(choice(problem, names, volume));
            }
        }
        return choices;
    }

    /** The set with the greatest sum up to a bound. */
    private static Set<String> fullest(List<Map.Entry<String, Double>> groups, double most) {
        int best = 0;
        double greatest = 0;
        for (int set = 1; set < 1 << groups.size(); set++) {
            double sum = 0;
            for (int g = 0; g < groups.size(); g++) {
                sum += (set >> g & 1) == 1 ? groups.get(g).getValue() : 0;
            }
            if (sum <= most && sum > greatest) {
                greatest = sum;
                best = set;
            }
        }
        Set<String> names = new TreeSet<>();
        for (int g = 0; g < groups.size(); g++) {
            if ((best >> g & 1) == 1) {
                names.add(groups.get(g).getKey());
            }
        }
        return names;
    }

    private static Set<String> greedy(List<Map.Entry<String, Double>> groups, double most) {
        Set<String> names = new TreeSet<>();
        double sum = 0;
        for (Map.Entry<String, Double> group : groups) {
            if (sum + group.getValue() <= most) {
                sum += group.getValue();
                names.add(group.getKey());
            }
        }
        return names;
    }

    private static Choice choice(LoadProblem problem, Set<String> names, double volume) {
        List<CargoKind> kinds = new ArrayList<>();
        List<Integer> indices = new ArrayList<>();
        for (int k = 0; k < problem.kinds().size(); k++) {
            String group = problem.kinds().get(k).together();
            if (group == null || names.contains(group)) {
                kinds.add(problem.kinds().get(k));
                indices.add(k);
            }
        }
        return new Choice(problem.withKinds(kinds), indices, volume);
    }
}
