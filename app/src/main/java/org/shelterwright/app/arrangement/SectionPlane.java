package org.shelterwright.app.arrangement;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.Scene;

/** Chooses where the section across the body says most. */
final class SectionPlane {

    private SectionPlane() {}

    /**
     * The place along the body (µm) at which the greatest area of solids is cut, among the middles of all solids; the
     * rearmost of equal ones; the middle of an empty body. Cost: quadratic in the solids.
     */
    static int of(Scene scene, Situation situation) {
        List<Box> solids = scene.units().stream()
                .flatMap(unit -> unit.solids(situation).stream())
                .toList();
        TreeSet<Integer> places = new TreeSet<>();
        solids.forEach(solid -> places.add(solid.centre().x()));
        return places.stream()
                .max(Comparator.<Integer>comparingDouble(x -> area(solids, x)).thenComparing(Comparator.reverseOrder()))
                .orElse(scene.body().inside().x() / 2);
    }

    private static double area(List<Box> solids, int x) {
        return solids.stream()
                .filter(solid -> solid.x0() < x && x < solid.x1())
                .mapToDouble(solid -> (double) (solid.y1() - solid.y0()) * (solid.z1() - solid.z0()))
                .sum();
    }
}
