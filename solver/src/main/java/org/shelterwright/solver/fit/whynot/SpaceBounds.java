package org.shelterwright.solver.fit.whynot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.scene.Scene;

/** Bounds of volume, floor area and length along walls: what the units need at least against what the body has. */
final class SpaceBounds {
    private final Scene scene;
    private final Size inside;

    SpaceBounds(Scene scene) {
        this.scene = scene;
        this.inside = scene.body().inside();
    }

    List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        volume(reasons);
        floorArea(reasons);
        wallLength(reasons);
        return reasons;
    }

    private void volume(List<String> reasons) {
        double needed = 0;
        for (UnitSpec unit : scene.brief().units()) {
            needed += leastVolume(scene.layout().item(unit));
        }
        double there = inside.volumeM3();
        if (needed > there) {
            reasons.add(String.format(
                    Locale.ROOT,
                    "The solids of all units fill %.2f m³, but the body holds only %.2f m³: leave out at least %.2f m³.",
                    needed,
                    there,
                    needed - there));
        }
    }

    /** The lesser of both situations; overlapping solids of one item are not counted twice. */
    private static double leastVolume(Item item) {
        double least = Double.MAX_VALUE;
        for (Situation situation : Situation.values()) {
            double largest = 0;
            double sum = 0;
            List<Box> solids = item.solids(situation);
            boolean apart = true;
            for (int i = 0; i < solids.size(); i++) {
                sum += solids.get(i).volumeM3();
                largest = Math.max(largest, solids.get(i).volumeM3());
                for (int j = 0; j < i; j++) {
                    apart &= !solids.get(i).overlaps(solids.get(j));
                }
            }
            least = Math.min(least, apart ? sum : largest);
        }
        return least;
    }

    /** Every unit that can only stand on the floor covers at least what its largest low solid covers. */
    private void floorArea(List<String> reasons) {
        double needed = 0;
        int count = 0;
        for (UnitSpec unit : scene.brief().units()) {
            Item item = scene.layout().item(unit);
            if (item.mounting().surfaces().equals(Set.of(Surface.FLOOR))) {
                needed += print(item);
                count++;
            }
        }
        double there = Lengths.metres(inside.x()) * Lengths.metres(inside.y());
        there -= blockedFloor();
        if (needed > there) {
            reasons.add(String.format(
                    Locale.ROOT,
                    "The %d units that stand on the floor alone cover %.2f m², but the floor has only %.2f m²: leave out"
                            + " at least %.2f m².",
                    count,
                    needed,
                    there,
                    needed - there));
        }
    }

    /** Floor under parts of the body, as far as these do not overlap each other. */
    private double blockedFloor() {
        List<Box> low = scene.body().intrusions().stream()
                .map(Intrusion::box)
                .filter(box -> box.z0() <= 0 && box.z1() > 0)
                .toList();
        double sum = 0;
        for (int i = 0; i < low.size(); i++) {
            Rect rect = Rect.of(low.get(i));
            boolean apart = low.subList(0, i).stream().map(Rect::of).noneMatch(rect::overlaps);
            sum += apart ? Rect.of(inside.box()).sharedM2(rect) : 0;
        }
        return sum;
    }

    private static double print(Item item) {
        double least = Double.MAX_VALUE;
        for (Situation situation : Situation.values()) {
            double largest = 0;
            for (Box solid : item.solids(situation)) {
                if (solid.z0() == 0) {
                    largest = Math.max(
                            largest, Lengths.metres(solid.x1() - solid.x0()) * Lengths.metres(solid.y1() - solid.y0()));
                }
            }
            least = Math.min(least, largest);
        }
        return least;
    }

    /** Units on the floor that reach through one height all stand beside each other along the walls that they must touch. */
    private void wallLength(List<String> reasons) {
        Map<String, Integer> alongWall = new HashMap<>();
        long needed = 0;
        int count = 0;
        for (UnitSpec unit : scene.brief().units()) {
            Item item = scene.layout().item(unit);
            boolean wallOnly = item.mounting().surfaces().equals(Set.of(Surface.WALL));
            Integer least = item.mounting().lowestAbove();
            Integer greatest = item.mounting().highestAbove();
            if (wallOnly && least != null && greatest != null && item.size().z() > greatest - least) {
                int middle = (least + greatest + item.size().z()) / 2;
                alongWall.put(unit.id(), middle);
            }
        }
        for (int level : alongWall.values()) {
            long sum = 0;
            int here = 0;
            for (UnitSpec unit : scene.brief().units()) {
                Item item = scene.layout().item(unit);
                Integer least = item.mounting().lowestAbove();
                Integer greatest = item.mounting().highestAbove();
                boolean crosses = alongWall.containsKey(unit.id())
                        && least != null
                        && greatest != null
                        && greatest <= level
                        && least + item.size().z() > level;
                if (crosses && item.solids(Situation.ON_STATION).size() == 1) {
                    sum += item.size().y();
                    here++;
                }
            }
            if (sum > needed) {
                needed = sum;
                count = here;
            }
        }
        long there = 2L * inside.x() + 2L * inside.y();
        if (needed > there) {
            reasons.add(String.format(
                    Locale.ROOT,
                    "%d wall units cross one height and take %.0f mm of wall side by side, but all four walls have only %.0f mm:"
                            + " leave out at least %.0f mm of them.",
                    count,
                    needed / 1e3,
                    there / 1e3,
                    (needed - there) / 1e3));
        }
    }
}
