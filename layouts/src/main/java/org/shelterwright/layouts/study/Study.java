package org.shelterwright.layouts.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Many fits of one brief, or many loads of one journey: one for each way to take one setting from every axis, with each seed.
 *
 * @param id unique among a person's studies
 * @param brief {@code sample:NAME}, or the name of a brief's file in the folder of the study; {@code null} in a study of a journey
 * @param journey the same for a journey; {@code null} in a study of a brief
 * @param seeds {@code null}: seed 1 alone
 * @param leaveOut which runs are left out
 * @param moves moves that each run tries; of a journey, each packing of crates
 * @param keep of which runs the places are kept; {@code null}: of all
 * @param note one sentence for people; {@code null} if there is none
 */
public record Study(
        String id,
        String name,
        @Nullable String brief,
        @Nullable String journey,
        List<StudyAxis> axes,
        @Nullable Seeds seeds,
        List<LeftOut> leaveOut,
        long moves,
        @Nullable Keep keep,
        @Nullable String note) {
    /** Most moves that one run may try. */
    public static final long MOST_MOVES = 1_000_000_000_000L;

    public Study {
        axes = List.copyOf(axes);
        leaveOut = List.copyOf(leaveOut);
        if ((brief == null) == (journey == null)) {
            throw new IllegalArgumentException(
                    "A study names either a brief or a journey, as \"brief\" or \"journey\".");
        }
        if (moves < 1 || moves > MOST_MOVES) {
            throw new IllegalArgumentException(
                    "The moves of a run, " + moves + ", must be from 1 to " + MOST_MOVES + ".");
        }
    }

    /**
     * The seeds of the searches.
     *
     * @param first the first
     * @param count how many; each is one more than the one before
     */
    public record Seeds(long first, int count) {
        public Seeds {
            if (count < 1) {
                throw new IllegalArgumentException("The number of seeds, " + count + ", must be at least 1.");
            }
            if (first < 0 || first > Long.MAX_VALUE - count) {
                throw new IllegalArgumentException("The first seed, " + first + ", must be at least 0.");
            }
        }
    }

    /** Of which runs the places of all units are kept with the result. The others can be had again by their seed. */
    public enum Keep {
        ALL,
        /** Of those that break no limit. */
        UNBROKEN,
        NONE
    }

    public Seeds seedsOrOne() {
        return seeds == null ? new Seeds(1, 1) : seeds;
    }

    public Keep keepOrAll() {
        return keep == null ? Keep.ALL : keep;
    }
}
