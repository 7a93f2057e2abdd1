package org.shelterwright.layouts.ways;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Whether, and how, a unit gets from its place to the outside past some others. The way in is the same backwards.
 *
 * @param answer what came out
 * @param opening through which it comes; {@code null} if there is no way, or it stands outside already
 * @param legs where its solids are at each stage, from its place to the outside; empty if there is no way
 * @param swept what it passes through between each stage and the next; then what parts of it that came off pass through
 * @param stages turn and shift at each stage, as {@code legs}
 * @param frontier units, by index, that bound the space that it can reach; while all of them stay, it stays stuck
 * @param apart whether the parts that come off it are off on the way
 * @param lyingOn side of its item that it lies on for some of the way; {@code null} if it stays upright
 */
public record Passage(
        PlacedUnit unit,
        Answer answer,
        @Nullable Opening opening,
        List<List<Box>> legs,
        List<List<Box>> swept,
        List<Stage> stages,
        BitSet frontier,
        boolean apart,
        @Nullable Face lyingOn) {
    /** What came out. */
    public enum Answer {
        /** There is a way. */
        FREE,
        /** Other units are in the way. */
        BLOCKED,
        /** The body alone is in the way: it comes through no opening. */
        TOO_LARGE,
        /** It overlaps others, or the body, where it stands: no way can be looked for. */
        OVERLAPS
    }

    public Passage {
        legs = legs.stream().map(List::copyOf).toList();
        swept = swept.stream().map(List::copyOf).toList();
        stages = List.copyOf(stages);
        frontier = (BitSet) frontier.clone();
    }

    /** A way upright and whole, or none. */
    public Passage(
            PlacedUnit unit,
            Answer answer,
            @Nullable Opening opening,
            List<List<Box>> legs,
            List<List<Box>> swept,
            List<Stage> stages,
            BitSet frontier) {
        this(unit, answer, opening, legs, swept, stages, frontier, false, null);
    }

    public boolean free() {
        return answer == Answer.FREE;
    }

    @Override
    public BitSet frontier() {
        return (BitSet) frontier.clone();
    }

    /** Whether a unit stands in this way. */
    public boolean meets(PlacedUnit other) {
        List<Box> solids = other.solids(Situation.ON_STATION);
        return swept.stream()
                .flatMap(List::stream)
                .anyMatch(box -> solids.stream().anyMatch(box::overlaps));
    }

    /** Whether it turns on the way. */
    public boolean turns() {
        return stages.stream().anyMatch(stage -> stage.quarters() != 0);
    }

    /** How high above where it stands its bottom gets on the way, or below it (µm); zero if it stays on its level. */
    public int highest() {
        return stages.stream().mapToInt(stage -> stage.shift().z()).max().orElse(0);
    }

    /** The length of the way (µm). */
    public long length() {
        long length = 0;
        for (int i = 1; i < stages.size(); i++) {
            var way = stages.get(i).shift().minus(stages.get(i - 1).shift());
            length += Math.abs((long) way.x()) + Math.abs((long) way.y()) + Math.abs((long) way.z());
        }
        return length;
    }

    Passage with(List<Box> alsoSwept) {
        if (alsoSwept.isEmpty()) {
            return this;
        }
        List<List<Box>> more = new ArrayList<>(swept);
        more.add(alsoSwept);
        return new Passage(unit, answer, opening, legs, more, stages, frontier, apart, lyingOn);
    }

    static Passage of(PlacedUnit unit, Answer answer, BitSet frontier) {
        return new Passage(unit, answer, null, List.of(), List.of(), List.of(), frontier);
    }
}
