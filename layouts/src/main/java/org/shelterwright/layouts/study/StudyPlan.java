package org.shelterwright.layouts.study;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The runs of a study, numbered from 1: the settings of the last axis change fastest, and for each of them all seeds follow each
 * other. Immutable. Cost: linear in the ways to take one setting from each axis.
 */
public final class StudyPlan {
    /** Most runs of one study. */
    public static final int MOST_RUNS = 100_000;

    /** Most ways to take one setting from each axis, those that are left out included. */
    static final int MOST_WAYS = 1_000_000;

    private final Study study;
    private final int[] ways;
    private final int seeds;

    private StudyPlan(Study study, int[] ways, int seeds) {
        this.study = study;
        this.ways = ways;
        this.seeds = seeds;
    }

    /**
     * One run.
     *
     * @param number from 1
     * @param settings one of each axis, by the id of the axis, in their order
     */
    public record Run(int number, Map<String, Setting> settings, long seed) {
        /** Ids of the settings by the ids of their axes. */
        public Map<String, String> ids() {
            Map<String, String> ids = new LinkedHashMap<>();
            settings.forEach((axis, setting) -> ids.put(axis, setting.id()));
            return ids;
        }
    }

    /**
     * Counts the runs of a study.
     *
     * @throws IllegalArgumentException with a sentence if there are none or too many
     */
    public static StudyPlan of(Study study) {
        int seeds = study.seedsOrOne().count();
        BigInteger all = BigInteger.ONE;
        for (StudyAxis axis : study.axes()) {
            all = all.multiply(BigInteger.valueOf(axis.settings().size()));
        }
        if (all.compareTo(BigInteger.valueOf(MOST_WAYS)) > 0) {
            throw tooMany(all.multiply(BigInteger.valueOf(seeds)));
        }
        List<Integer> kept = new ArrayList<>();
        for (int way = 0; way < all.intValueExact(); way++) {
            if (study.leaveOut().isEmpty() || !leftOut(study, way)) {
                kept.add(way);
            }
        }
        if (kept.isEmpty()) {
            throw new IllegalArgumentException("The study leaves out every run. Leave out fewer.");
        }
        BigInteger runs = BigInteger.valueOf(kept.size()).multiply(BigInteger.valueOf(seeds));
        if (runs.compareTo(BigInteger.valueOf(MOST_RUNS)) > 0) {
            throw tooMany(runs);
        }
        return new StudyPlan(study, kept.stream().mapToInt(Integer::intValue).toArray(), seeds);
    }

    public Study study() {
        return study;
    }

    /** How many runs there are. */
    public int count() {
        return ways.length * seeds;
    }

    /** How many runs are left out. */
    public long leftOut() {
        long all =
                study.axes().stream().mapToLong(axis -> axis.settings().size()).reduce(1, (a, b) -> a * b);
        return (all - ways.length) * seeds;
    }

    /**
     * One run.
     *
     * @param number from 1 to {@link #count}
     */
    public Run run(int number) {
        if (number < 1 || number > count()) {
            throw new IllegalArgumentException(
                    "There is no run " + number + ": the study has the runs 1 to " + count() + ".");
        }
        long seed = study.seedsOrOne().first() + (number - 1) % seeds;
        return new Run(number, settings(study, ways[(number - 1) / seeds]), seed);
    }

    private static boolean leftOut(Study study, int way) {
        Map<String, String> ids = new Run(0, settings(study, way), 0).ids();
        return study.leaveOut().stream().anyMatch(one -> one.covers(ids));
    }

    private static Map<String, Setting> settings(Study study, int way) {
        List<StudyAxis> axes = study.axes();
        int rest = way;
        Setting[] chosen = new Setting[axes.size()];
        for (int i = axes.size() - 1; i >= 0; i--) {
            int count = axes.get(i).settings().size();
            chosen[i] = axes.get(i).settings().get(rest % count);
            rest /= count;
        }
        Map<String, Setting> settings = new LinkedHashMap<>();
        for (int i = 0; i < chosen.length; i++) {
            settings.put(axes.get(i).id(), chosen[i]);
        }
        return settings;
    }

    private static IllegalArgumentException tooMany(BigInteger runs) {
        return new IllegalArgumentException("The study asks for " + runs + " runs; at most " + MOST_RUNS
                + " are taken. Take fewer settings or seeds, leave more out, or split it.");
    }
}
