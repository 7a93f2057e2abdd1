package org.shelterwright.layouts.insight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;

/**
 * Largest cuboids in a frame that hold nothing, exact. A cuboid that cannot grow stands on the floor of the frame or on a
 * top, and ends at its roof or at an underside: for each such pair of heights, the largest empty rectangle among what is cut.
 */
final class OpenBoxes {
    private final Box frame;
    private final List<Box> filled;

    OpenBoxes(Box frame, List<Box> filled) {
        this.frame = frame;
        this.filled = filled.stream()
                .filter(frame::overlaps)
                .map(frame::intersection)
                .distinct()
                .toList();
    }

    /** The largest by volume; empty if the frame is full. Cost: heights squared times the rectangles squared, most of it cut short. */
    Optional<Box> largest() {
        Box best = null;
        List<int[]> slabs = new ArrayList<>();
        for (int low : lows()) {
            for (int high : highs()) {
                if (high > low) {
                    slabs.add(new int[] {low, high});
                }
            }
        }
        slabs.sort(Comparator.comparingInt((int[] slab) -> slab[0] - slab[1]));
        double base = 1e-12 * frame.extent(Axis.X) * frame.extent(Axis.Y);
        for (int[] slab : slabs) {
            double atMost = base * 1e-6 * (slab[1] - slab[0]);
            if (best == null || atMost > best.volumeM3()) {
                Box found = in(slab[0], slab[1]);
                if (found != null && (best == null || found.volumeM3() > best.volumeM3())) {
                    best = found;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The largest on the floor of the frame for each height up to which one can reach, the largest by volume first. */
    List<Box> onFloor() {
        List<Box> found = new ArrayList<>();
        for (int high : highs()) {
            Box box = high > frame.z0() ? in(frame.z0(), high) : null;
            if (box != null) {
                found.add(box);
            }
        }
        found.sort(Comparator.comparingDouble(box -> -box.volumeM3()));
        return found;
    }

    private TreeSet<Integer> lows() {
        TreeSet<Integer> lows = new TreeSet<>(List.of(frame.z0()));
        filled.forEach(box -> lows.add(box.z1()));
        return lows;
    }

    private TreeSet<Integer> highs() {
        TreeSet<Integer> highs = new TreeSet<>(List.of(frame.z1()));
        filled.forEach(box -> highs.add(box.z0()));
        return highs;
    }

    /** The largest that fills the heights from low to high; {@code null} if there is none. */
    private @Nullable Box in(int low, int high) {
        List<Box> cut =
                filled.stream().filter(box -> box.z0() < high && box.z1() > low).toList();
        int[] xs = cuts(
                cut.stream()
                        .flatMap(box -> List.of(box.x0(), box.x1()).stream())
                        .toList(),
                frame.x0(),
                frame.x1());
        int[] ys = cuts(
                cut.stream()
                        .flatMap(box -> List.of(box.y0(), box.y1()).stream())
                        .toList(),
                frame.y0(),
                frame.y1());
        boolean[][] taken = new boolean[ys.length - 1][xs.length - 1];
        for (Box box : cut) {
            int from = Arrays.binarySearch(xs, box.x0());
            int to = Arrays.binarySearch(xs, box.x1());
            for (int j = Arrays.binarySearch(ys, box.y0()); ys[j] < box.y1(); j++) {
                Arrays.fill(taken[j], from, to, true);
            }
        }
        return new EmptyRectangle(xs, ys, taken).largest(low, high);
    }

    private static int[] cuts(List<Integer> places, int first, int last) {
        TreeSet<Integer> cuts = new TreeSet<>(places);
        cuts.add(first);
        cuts.add(last);
        return cuts.stream().mapToInt(Integer::intValue).toArray();
    }
}
