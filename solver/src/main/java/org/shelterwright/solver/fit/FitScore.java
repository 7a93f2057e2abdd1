package org.shelterwright.solver.fit;

/**
 * How good a layout is: the lower the better, level by level.
 *
 * @param hard what cannot be built or is unsafe; zero when all such limits hold
 * @param medium what cannot be reached or assembled as it should
 * @param soft wishes not kept, mass off centre and high
 */
public record FitScore(long hard, long medium, long soft) implements Comparable<FitScore> {
    @Override
    public int compareTo(FitScore o) {
        int byHard = Long.compare(hard, o.hard);
        if (byHard != 0) {
            return byHard;
        }
        int byMedium = Long.compare(medium, o.medium);
        return byMedium != 0 ? byMedium : Long.compare(soft, o.soft);
    }
}
