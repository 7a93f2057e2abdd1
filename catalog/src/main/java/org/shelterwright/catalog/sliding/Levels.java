package org.shelterwright.catalog.sliding;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The coordinates on one axis at which free space is looked at, and for each of them, and for each open strip between
 * two of them, the set of obstacles that lie in it.
 *
 * <p>Idea: free space is closed, and over any cell of the other axes it is a union of closed intervals whose low ends are
 * upper ends of obstacles or the low end of the domain. Keeping only those (and the start and the goal) loses nothing: a
 * crossing between two neighbouring intervals can be made at the low end of the part that they share.
 */
final class Levels {
    private final int[] at;
    private final int words;
    private final long[] masks;

    /**
     * @param lows low ends of the open obstacles on this axis
     * @param highs their high ends
     * @param domainLow least shift on this axis
     * @param domainHigh greatest shift on this axis
     * @param extra further levels that must be there, such as the start
     * @param most greatest number of levels; fewer give a sound yes but no sound no
     */
    Levels(int[] lows, int[] highs, int domainLow, int domainHigh, int[] extra, int most) {
        int[] all = IntStream.concat(
                        Arrays.stream(highs), IntStream.concat(IntStream.of(domainLow), Arrays.stream(extra)))
                .filter(level -> level >= domainLow && level <= domainHigh)
                .sorted()
                .distinct()
                .toArray();
        this.at = all.length <= most ? all : thinned(all, extra, most);
        this.words = (lows.length + 63) >>> 6;
        this.masks = new long[(2 * at.length - 1) * words];
        for (int obstacle = 0; obstacle < lows.length; obstacle++) {
            mark(obstacle, lows[obstacle], highs[obstacle]);
        }
    }

    private Levels(int[] at, int[] lows, int[] highs) {
        this.at = at;
        this.words = (lows.length + 63) >>> 6;
        this.masks = new long[(2 * at.length - 1) * words];
        for (int obstacle = 0; obstacle < lows.length; obstacle++) {
            mark(obstacle, lows[obstacle], highs[obstacle]);
        }
    }

    /** Just the given levels, rising. */
    static Levels at(int[] lows, int[] highs, int[] levels) {
        return new Levels(levels, lows, highs);
    }

    private static int[] thinned(int[] all, int[] extra, int most) {
        return IntStream.concat(
                        IntStream.range(0, Math.max(most, 2))
                                .map(i -> all[(int) ((long) i * (all.length - 1) / (Math.max(most, 2) - 1))]),
                        Arrays.stream(extra))
                .filter(level -> Arrays.binarySearch(all, level) >= 0)
                .sorted()
                .distinct()
                .toArray();
    }

    private void mark(int obstacle, int low, int high) {
        int word = obstacle >>> 6;
        long bit = 1L << obstacle;
        for (int level = first(low); level < at.length && at[level] < high; level++) {
            masks[cellOfLevel(level) * words + word] |= bit;
        }
        // A strip is met if the open obstacle and the open strip share a coordinate.
        for (int strip = Math.max(first(low) - 1, 0); strip < at.length - 1 && at[strip] < high; strip++) {
            if (low < at[strip + 1]) {
                masks[cellOfStrip(strip) * words + word] |= bit;
            }
        }
    }

    /** The first level strictly above a coordinate. */
    private int first(int low) {
        int found = Arrays.binarySearch(at, low);
        return found >= 0 ? found + 1 : -found - 1;
    }

    int count() {
        return at.length;
    }

    int level(int index) {
        return at[index];
    }

    int indexOf(int level) {
        int found = Arrays.binarySearch(at, level);
        if (found < 0) {
            throw new IllegalArgumentException("The coordinate " + level + " is not a level.");
        }
        return found;
    }

    static int cellOfLevel(int level) {
        return 2 * level;
    }

    /** The strip between a level and the next one. */
    static int cellOfStrip(int level) {
        return 2 * level + 1;
    }

    int words() {
        return words;
    }

    long mask(int cell, int word) {
        return masks[cell * words + word];
    }
}
