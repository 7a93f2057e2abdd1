package org.shelterwright.catalog.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one most likely means. */
public final class NearestName {
    private NearestName() {}

    /**
     * The known name nearest to the given one: the fewest letters inserted, left out, changed or swapped with their
     * neighbour (optimal string alignment), case and separators aside; nothing if more than a third of the letters
     * differ. Cost: length of the name times the letters of all known names.
     */
    public static Optional<String> of(String name, Collection<String> known) {
        String wanted = plain(name);
        if (wanted.length() > 100) {
            return Optional.empty();
        }
        int most = Math.max(1, wanted.length() / 3);
        return known.stream()
                .map(one -> new Candidate(one, distance(wanted, plain(one))))
                .filter(candidate -> candidate.distance <= most)
                .min(Comparator.comparingInt(Candidate::distance))
                .map(Candidate::name);
    }

    /** The end of a message: " Did you mean "…"?", or else what there is. */
    public static String hint(String name, Collection<String> known) {
        return of(name, known)
                .map(near -> " Did you mean \"" + near + "\"?")
                .orElseGet(() -> known.isEmpty() ? "" : " Known are: " + listed(known) + ".");
    }

    private static String listed(Collection<String> known) {
        String all = String.join(", ", known.stream().limit(30).toList());
        return known.size() > 30 ? all + ", …" : all;
    }

    private record Candidate(String name, int distance) {}

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[-_. ]", "");
    }

    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, cost[i - 2][j - 2] + 1);
                }
                cost[i][j] = least;
            }
        }
        return cost[a.length()][b.length()];
    }
}
