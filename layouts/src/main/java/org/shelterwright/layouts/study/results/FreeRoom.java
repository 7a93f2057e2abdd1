package org.shelterwright.layouts.study.results;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.scene.Scene;

/** The room in a body that no solid fills, exact: what several solids fill is taken off once. */
public final class FreeRoom {
    private FreeRoom() {}

    /** Room left on station (m³): the inside less the body's own intrusions and the solids of all placed units. */
    static double ofScene(Scene scene) {
        List<Box> filled = new ArrayList<>();
        scene.body().intrusions().stream().map(Intrusion::box).forEach(filled::add);
        scene.units().forEach(unit -> filled.addAll(unit.solids(Situation.ON_STATION)));
        Box inside = scene.body().inside().box();
        return inside.volumeM3() - filledM3(inside, filled);
    }

    /**
     * Volume of the union of boxes within a frame (m³), by slabs between their faces along x, then along y, and joined stretches
     * along z. Cost: cubic in the boxes at worst; they are few where each slab is cut.
     */
    static double filledM3(Box frame, List<Box> boxes) {
        List<Box> within =
                boxes.stream().filter(frame::overlaps).map(frame::intersection).toList();
        TreeSet<Integer> xs = new TreeSet<>();
        within.forEach(box -> {
            xs.add(box.x0());
            xs.add(box.x1());
        });
        double filled = 0;
        Integer from = null;
        for (Integer to : xs) {
            if (from != null) {
                int x0 = from;
                List<Box> crossing = within.stream()
                        .filter(box -> box.x0() <= x0 && box.x1() >= to)
                        .toList();
                filled += Lengths.metres(to - x0) * acrossM2(crossing);
            }
            from = to;
        }
        return filled;
    }

    private static double acrossM2(List<Box> boxes) {
        TreeSet<Integer> ys = new TreeSet<>();
        boxes.forEach(box -> {
            ys.add(box.y0());
            ys.add(box.y1());
        });
        double area = 0;
        Integer from = null;
        for (Integer to : ys) {
            if (from != null) {
                int y0 = from;
                List<Box> crossing = boxes.stream()
                        .filter(box -> box.y0() <= y0 && box.y1() >= to)
                        .sorted((a, b) -> Integer.compare(a.z0(), b.z0()))
                        .toList();
                area += Lengths.metres(to - y0) * upM(crossing);
            }
            from = to;
        }
        return area;
    }

    private static double upM(List<Box> rising) {
        double length = 0;
        int reached = Integer.MIN_VALUE;
        for (Box box : rising) {
            int low = Math.max(box.z0(), reached);
            if (box.z1() > low) {
                length += Lengths.metres(box.z1() - low);
                reached = box.z1();
            }
        }
        return length;
    }
}
