package org.shelterwright.solver.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;

/**
 * Which groups that go together or not at all are to go. A search that draws from all kinds at once leaves a little of every group
 * behind, and then loses all of them; one that is given only groups which can go as a whole does not. Every choice is tried from the
 * greatest volume down; the first that goes in as a whole is the best there is of them.
 *
 * <p>Cost: 2 to the number of groups, of which at most {@value #MOST_GROUPS} are chosen from; those with the least volume beyond that
 * always stay behind.
 */
final class GroupChoices {
    /** Share of a room beyond which no choice is tried: mixed cargo does not fill it further. */
    private static final double FULLEST = 0.97;

    private static final int MOST_GROUPS = 14;

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

    /**
     * The choices that could hold more than a volume, the greatest first.
     *
     * @param most how many at most
     */
    static List<Choice> of(LoadProblem problem, double above, int most) {
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
        List<String> names = volumes.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, Double> one) -> -one.getValue())
                        .thenComparing(Map.Entry::getKey))
                .limit(MOST_GROUPS)
                .map(Map.Entry::getKey)
                .toList();
        double room = FULLEST * problem.roomVolume();
        List<Choice> choices = new ArrayList<>();
        for (int set = 1; set < 1 << names.size(); set++) {
            double grouped = 0;
            for (int g = 0; g < names.size(); g++) {
                grouped += (set >> g & 1) == 1 ? volumes.getOrDefault(names.get(g), 0.0) : 0;
            }
            double volume = Math.min(room, grouped + free);
            if (grouped <= room && volume > above) {
                choices.add(choice(problem, names, set, volume));
            }
        }
        choices.sort(Comparator.comparingDouble(Choice::volume).reversed());
        return choices.size() > most ? List.copyOf(choices.subList(0, most)) : choices;
    }

    private static Choice choice(LoadProblem problem, List<String> names, int set, double volume) {
        List<CargoKind> kinds = new ArrayList<>();
        List<Integer> indices = new ArrayList<>();
        for (int k = 0; k < problem.kinds().size(); k++) {
            @Nullable String group = problem.kinds().get(k).together();
            int at = group == null ? -1 : names.indexOf(group);
            if (group == null || at >= 0 && (set >> at & 1) == 1) {
                kinds.add(problem.kinds().get(k));
                indices.add(k);
            }
        }
        return new Choice(problem.withKinds(kinds), indices, volume);
    }
}
