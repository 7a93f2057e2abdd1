package org.shelterwright.solver.fit.model;

/**
 * What a state lacks, level by level; the lower the better.
 *
 * @param hard what cannot be built or is unsafe (thousandths of a mm or kg)
 * @param medium what cannot be reached or assembled as it should
 * @param soft wishes and habits not kept, centre of mass off the middle and high
 */
public record Amounts(long hard, long medium, long soft) implements Comparable<Amounts> {
    @Override
    public int compareTo(Amounts o) {
        int byHard = Long.compare(hard, o.hard);
        if (byHard != 0) {
            return byHard;
        }
        int byMedium = Long.compare(medium, o.medium);
        return byMedium != 0 ? byMedium : Long.compare(soft, o.soft);
    }

    /** Whether every limit that was looked at holds. */
    public boolean holds() {
        return hard == 0 && medium == 0;
    }
}
